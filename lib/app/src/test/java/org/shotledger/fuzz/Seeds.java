package org.shotledger.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.shotledger.job.TableKind;
import org.shotledger.units.QuantityKind;

/** Good files and odd words, from which bad files are made. */
final class Seeds {
    private static final Pattern FIGURE = Pattern.compile("(?<=[:,{] )[-\\d][^,}\\n#]*");
    private static final String SHEET = ReaderTargets.file(ReaderTargets.HERON.resolve("job.yaml"));

    /** What breaks readers: numbers at the edge of a double, words that mean a number, marks of YAML, CSV and JSON. */
    static final List<String> ODD = List.of(
            "0",
            "-0",
            "1",
            "-1",
            "0.0000001",
            "1e308",
            "1e999",
            "-1e999",
            "4.9e-324",
            "NaN",
            "Infinity",
            "9999999999",
            "2147483648",
            "0x10",
            "1_000",
            "1,5",
            "1.5",
            ".5",
            "5.",
            "+5",
            "1/3",
            "1/0",
            "%",
            "50 %",
            "+/-",
            "\u00b1 2",
            "-300 degC",
            "psi",
            "psi gauge",
            "bar abs",
            "degF difference",
            "oz",
            "gal",
            "lb",
            "drill 52",
            "drill A",
            "mm",
            "in",
            "thou",
            "cc/min",
            "lb/min",
            "\u00b5m",
            "\u03a9",
            "true",
            "no",
            "null",
            "~",
            "&a",
            "*a",
            "!!int",
            "<<",
            "|",
            ">",
            "---",
            "...",
            "%YAML 1.2",
            "? ",
            ": ",
            "- ",
            "#",
            "\"",
            "'",
            "\\",
            "\\u0000",
            "[",
            "]",
            "{",
            "}",
            ",",
            ";",
            "\t",
            "\r\n",
            "\r",
            "\n",
            "\u0000",
            "\u0085",
            "\u2028",
            "\ufeff",
            "\ud83d\ude00",
            "\ud83d",
            "../../x.csv",
            "/etc/hosts",
            "C:\\x",
            "con",
            "a: b: c",
            "value",
            "from",
            "standing",
            "note",
            "format",
            "[[[[[[[[[[[[[[[[[[[[",
            "{a: {b: {c: ",
            "cells",
            "outputs",
            "source",
            "metadata",
            "nbformat",
            "[1, 2]",
            "{}");

    private Seeds() {}

    /** Figures of the demonstration and of every kind's own units, each behind a byte that chooses a kind. */
    static List<String> figures() {
        List<String> texts = new ArrayList<>();
        FIGURE.matcher(SHEET).results().forEach(m -> texts.add(m.group().strip()));
        for (QuantityKind kind : QuantityKind.values()) {
            for (var system : org.shotledger.units.UnitSystem.values()) {
                texts.add((12.5 + " " + kind.unit(system)).strip() + " +/- 0.5");
            }
        }
        return behindEach(texts, QuantityKind.values().length);
    }

    /** The sections of the demonstration one by one. */
    static List<String> yaml() {
        return List.of(SHEET.split("\n(?=[a-z])"));
    }

    /** The whole demonstration. */
    static List<String> sheets() {
        return List.of(SHEET);
    }

    /** Tables of the demonstration and the catalogue, cut to a few rows, each behind the byte of every kind. */
    static List<String> tables() {
        List<String> texts = new ArrayList<>();
        for (Path folder : List.of(ReaderTargets.HERON, Path.of("../../data/catalogue"))) {
            try (Stream<Path> files = Files.list(folder)) {
                files.filter(f -> f.toString().endsWith(".csv")).sorted().forEach(file -> {
                    List<String> lines =
                            ReaderTargets.file(file).lines().limit(25).toList();
                    texts.add(String.join("\n", lines) + "\n");
                    texts.add(String.join("\n", lines).replace(',', ';').replace('.', ',') + "\n");
                });
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return behindEach(texts, TableKind.values().length);
    }

    /** A log of the demonstration with few rows, one with headings of our own, and the mapping; each behind the byte of its kind. */
    static List<String> logs() {
        Path folder = ReaderTargets.HERON.resolve("logs");
        List<String> lines = ReaderTargets.file(folder.resolve("pull-with-nitrous.csv"))
                .lines()
                .toList();
        String foreign =
                String.join("\n", lines.subList(0, 5)) + "\n" + String.join("\n", lines.subList(250, 340)) + "\n";
        StringBuilder own =
                new StringBuilder("time [s],engine speed [rpm],lambda,nitrous on,manifold pressure [kPa abs]\n");
        for (int i = 0; i < 120; i++) {
            own.append(i / 20.0 + "," + (3000 + 30 * i) + ",0.8" + i % 7 + "," + (i > 60 ? "on" : "off") + ","
                    + (180 + i % 11) + "\n");
        }
        return List.of(
                "\0" + own,
                "\1" + foreign,
                "\1" + foreign.replace(',', ';').replace('.', ','),
                "\2" + ReaderTargets.file(folder.resolve("log.yaml")));
    }

    /** A small notebook with every part a notebook can have. */
    static List<String> notebooks() {
        return List.of("""
                {"cells": [
                 {"cell_type": "markdown", "id": "a", "metadata": {"tags": ["x"]}, "source": ["# Title\\n", "words"]},
                 {"cell_type": "code", "id": "b", "metadata": {}, "execution_count": 3, "source": "1 + 1",
                  "outputs": [
                   {"output_type": "execute_result", "execution_count": 3, "metadata": {},
                    "data": {"text/plain": "2", "application/json": {"a": [1, 2.5, null, true]}}},
                   {"output_type": "stream", "name": "stdout", "text": ["one\\n", "two"]},
                   {"output_type": "error", "ename": "E", "evalue": "v", "traceback": ["t"]}]},
                 {"cell_type": "raw", "metadata": {}, "source": ""}],
                 "metadata": {"kernelspec": {"name": "shotledger", "display_name": "S"}},
                 "nbformat": 4, "nbformat_minor": 4}
                """, "{\"nbformat\": 4, \"cells\": []}");
    }

    private static List<String> behindEach(List<String> texts, int kinds) {
        List<String> all = new ArrayList<>();
        for (String text : texts) {
            for (int kind = 0; kind < kinds; kind++) {
                all.add((char) kind + text);
            }
        }
        return all;
    }
}
