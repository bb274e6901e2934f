package org.shotledger;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the arrows between the rooms of the core, as each {@code package-info} states them. */
class LayeringTest {
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.shotledger");

    /** Room, then the rooms it may import. */
    private static final Map<String, String> MAY_IMPORT = Map.ofEntries(
            Map.entry("units", ""),
            Map.entry("curve", ""),
            Map.entry("sheet", "units"),
            Map.entry("logs", "units sheet"),
            Map.entry("fluid", ""),
            Map.entry("gas", "units"),
            Map.entry("flow", "fluid curve"),
            Map.entry("bottle", "fluid flow curve"),
            Map.entry("fuel", "units curve gas"),
            Map.entry("engine", "units curve fluid gas fuel"),
            Map.entry("boost", "units curve gas engine fuel"),
            Map.entry("supply", "units curve fuel"),
            Map.entry("drive", "units curve"),
            Map.entry("wetkit", "curve fluid flow fuel supply"),
            Map.entry("wiring", "units curve"),
            Map.entry("pass", "units drive"),
            Map.entry("build", "units sheet curve fluid flow bottle gas fuel engine boost supply wetkit drive wiring"),
            Map.entry("budget", "units sheet curve fluid flow bottle gas fuel engine boost supply wetkit drive build"),
            Map.entry("delivery", "units flow engine wetkit drive build budget"),
            Map.entry("spread", "units flow fuel engine wetkit build budget"),
            Map.entry("reconcile", "units logs engine flow boost wetkit build budget spread"),
            Map.entry("relief", "units sheet build budget"),
            Map.entry("stepup", "units engine fluid flow wetkit build budget"),
            Map.entry(
                    "risk",
                    "units sheet curve fluid flow bottle gas fuel engine boost supply wetkit drive build budget delivery"),
            Map.entry(
                    "study",
                    "units sheet curve fluid flow bottle gas fuel engine boost supply wetkit drive build budget"),
            Map.entry(
                    "confidence",
                    "units sheet curve fluid flow bottle gas fuel engine boost supply wetkit drive build budget study"));

    static Set<String> rooms() {
        Set<String> rooms = new LinkedHashSet<>();
        CLASSES.forEach(c -> rooms.add(room(c.getPackageName())));
        return rooms;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rooms")
    void a_room_imports_only_what_its_package_info_allows(String room) {
        String allowed = MAY_IMPORT.get(room);
        if (allowed == null) {
            throw new AssertionError("The room org.shotledger." + room + " has no rule; state what it may import.");
        }
        List<String> packages = new java.util.ArrayList<>(List.of(packageOf(room)));
        Arrays.stream(allowed.split(" "))
                .filter(s -> !s.isEmpty())
                .map(LayeringTest::packageOf)
                .forEach(packages::add);
        ArchRuleDefinition.classes()
                .that()
                .resideInAPackage(packageOf(room))
                .should()
                .onlyDependOnClassesThat(com.tngtech.archunit.base.DescribedPredicate.or(
                        com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage(
                                "org.shotledger.."),
                        com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage(
                                packages.toArray(String[]::new))))
                .check(CLASSES);
    }

    @Test
    void no_two_rooms_lean_on_each_other() {
        slices().matching("org.shotledger.(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    private static String room(String packageName) {
        return packageName.substring("org.shotledger.".length()).replaceFirst("\\..*", "");
    }

    private static String packageOf(String room) {
        return "org.shotledger." + room + "..";
    }
}
