package org.shotledger.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.Writer;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** Lines read without the parser must mean what the parser reads in them; all others must be left to it. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class PlainLineTest {

    private static RunCommand parsed(String... words) {
        CommandLine all = Main.commands(new PrintWriter(Writer.nullWriter()), new PrintWriter(Writer.nullWriter()));
        return (RunCommand) all.parseArgs(words).subcommand().commandSpec().userObject();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "run a.ipynb",
                "run notebooks/a.ipynb --to ipynb",
                "run --out there a.ipynb --to html,ipynb --code hide",
                "run a.ipynb --set target=hp(780) --set words=a=b --set empty=",
                "run /tmp/a.ipynb --code show --out ../x --to pdf"
            })
    void a_plain_line_means_what_the_parser_reads_in_it(String line) {
        String[] words = line.split(" ");
        RunCommand plain = RunCommand.plain(words).orElseThrow();
        assertEquals(parsed(words).absolute(), plain.absolute());
        assertEquals(parsed(words).arguments(), plain.arguments());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "run",
                "run a.ipynb b.ipynb",
                "run a.txt",
                "run --to ipynb",
                "run a.ipynb --to docx",
                "run a.ipynb --to ipynb,",
                "run a.ipynb --code maybe",
                "run a.ipynb --out",
                "run a.ipynb --out --to",
                "run a.ipynb --out x --out y",
                "run a.ipynb --out=x",
                "run a.ipynb --set name",
                "run a.ipynb --set =value",
                "run a.ipynb --set a=1 --set a=2",
                "run a.ipynb --set a=\"1\"",
                "run a.ipynb --nonsense x",
                "run @words a.ipynb",
                "run -- a.ipynb"
            })
    void any_other_line_is_left_to_the_parser(String line) {
        assertTrue(RunCommand.plain(line.split(" ")).isEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"eval", "eval -x", "eval 1 --help", "eval @words", "eval 1 -- 2"})
    void so_is_code_that_begins_like_an_option(String line) {
        assertTrue(EvalCommand.plain(line.split(" ")).isEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"eval 1+1", "eval var a = 1; a-1"})
    void other_code_is_plain(String line) {
        assertTrue(EvalCommand.plain(line.split(" ")).isPresent());
    }
}
