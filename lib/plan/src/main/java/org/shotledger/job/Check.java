package org.shotledger.job;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.shotledger.bottle.FillingCheck;
import org.shotledger.car.Origin;
import org.shotledger.evaluate.BothUnits;
import org.shotledger.sheet.CsvColumn;
import org.shotledger.sheet.CsvRows;
import org.shotledger.sheet.CsvTable;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.SheetException;

/** Tells everything that is wrong with job sheets and tables, without using them. */
public final class Check {
    private Check() {}

    /**
     * What came of checking one file.
     *
     * @param problems everything that is wrong; empty when the file can be used
     * @param notices what was renamed or converted because a sheet is of an older format, and rules of the safety chain that do not hold
     * @param unusual what can be, but seldom is, and what the sheet does not say to be meant
     */
    public record Result(List<Problem> problems, List<Problem> notices, List<Problem> unusual) {

        public Result {
            problems = List.copyOf(problems);
            notices = List.copyOf(notices);
            unusual = List.copyOf(unusual);
        }

        private static Result wrong(List<Problem> problems) {
            return new Result(problems, List.of(), List.of());
        }
    }

    /**
     * Checks files.
     *
     * @param files job sheets ({@code .yaml}, {@code .yml}), folders that hold a {@code job.yaml}, and tables
     *     ({@code .csv}), whose headings tell what they are
     * @return every problem, in the order of the files; empty when all can be used
     */
    public static List<Problem> files(List<Path> files) {
        return files.stream().flatMap(file -> file(file).problems().stream()).toList();
    }

    /**
     * Checks one file.
     *
     * @param file as for {@link #files}
     * @return what is wrong with it, and what was changed while reading it
     */
    public static Result file(Path file) {
        String name = file.toString();
        String lower = name.toLowerCase(Locale.ROOT);
        try {
            if (Files.isDirectory(file) || lower.endsWith(".yaml") || lower.endsWith(".yml")) {
                Job job = Job.load(file);
                List<Problem> problems = new ArrayList<>(plannable(job));
                problems.addAll(WiringCheck.problems(job));
                List<Problem> notices = new ArrayList<>(job.notices());
                notices.addAll(WiringCheck.notices(job));
                return new Result(problems, notices, job.unusual());
            }
            if (lower.endsWith(".csv")) {
                table(file, file.getFileName().toString());
                return Result.wrong(List.of());
            }
            return Result.wrong(List.of(
                    Problem.of(name, "This is neither a job sheet (.yaml) nor a table (.csv); name one of them.")));
        } catch (SheetException e) {
            return Result.wrong(e.problems());
        }
    }

    /**
     * What stands in the way of a plan, though the sheet can be read: a filling nobody may allow, and what one evaluation finds.
     *
     * @param job the job
     * @return the problems; empty when the job can be planned
     */
    public static List<Problem> plannable(Job job) {
        List<Problem> filling = filling(job);
        return filling.isEmpty() ? Trial.of(job) : filling;
    }

    /** What nobody may loosen about the filling of the bottle. */
    private static List<Problem> filling(Job job) {
        return FillingCheck.of(job.car()
                        .bottle()
                        .filling(
                                job.setup().bottle().charge(),
                                job.setup().bottle().startTemperature(),
                                job.car().limits()))
                .broken()
                .stream()
                .map(limit -> new Problem(
                        job.source().file(),
                        job.car().origin("bottle.charge").map(Origin::line).orElse(1),
                        0,
                        "bottle.charge",
                        "",
                        limit.reason(BothUnits.FIGURES)))
                .toList();
    }

    private static void table(Path file, String name) {
        TableKind kind = kind(file, name);
        kind.use(name, CsvTable.read(file, name, kind.columns()));
    }

    /** The kind of table most of whose columns stand in the heading. */
    private static TableKind kind(Path file, String name) {
        List<String> headings;
        int line;
        try (CsvRows rows = CsvRows.open(file, name)) {
            headings = rows.headings().stream()
                    .map(h -> h.name().toLowerCase(Locale.ROOT))
                    .toList();
            line = rows.headingLine();
        }
        return Arrays.stream(TableKind.values())
                .filter(kind -> score(kind, headings) > 0)
                .max(Comparator.comparingDouble(kind -> score(kind, headings)))
                .orElseThrow(() -> new SheetException(new Problem(
                        name,
                        line,
                        0,
                        "",
                        "",
                        "No column of any known table stands in the heading; known tables are " + known() + ".")));
    }

    private static double score(TableKind kind, List<String> headings) {
        List<CsvColumn> columns = kind.columns();
        long met = columns.stream().filter(c -> headings.contains(c.name())).count();
        return (double) met / columns.stream().filter(CsvColumn::required).count();
    }

    private static String known() {
        return Arrays.stream(TableKind.values())
                .map(kind -> kind.words() + " ("
                        + String.join(
                                ", ",
                                kind.columns().stream().map(CsvColumn::name).toList()) + ")")
                .collect(Collectors.joining("; "));
    }
}
