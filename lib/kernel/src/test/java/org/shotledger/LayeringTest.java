package org.shotledger;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holds the arrows between the rooms of the kernel module, as each {@code package-info} states them. */
class LayeringTest {

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .withImportOption(new ImportOption.DoNotIncludeJars())
            .importPackages("org.shotledger");

    @ParameterizedTest
    @CsvSource({
        "snippet, display",
        "ipynb, display sheet",
        "runner, display snippet ipynb sheet",
        "comm, comm",
        "kernel, comm display snippet ipynb",
        "cli, display snippet ipynb runner kernel session build logs sheet units table chart document",
    })
    void aRoomImportsOnlyWhatItsPackageInfoAllows(String room, String allowed) {
        String[] packages = Stream.concat(
                        Stream.of("org.shotledger." + room + ".."),
                        List.of(allowed.split(" ")).stream().map(name -> "org.shotledger." + name + ".."))
                .toArray(String[]::new);
        ArchRuleDefinition.classes()
                .that()
                .resideInAPackage("org.shotledger." + room + "..")
                .should()
                .onlyDependOnClassesThat(JavaClass.Predicates.resideOutsideOfPackage("org.shotledger..")
                        .or(JavaClass.Predicates.resideInAnyPackage(packages)))
                .allowEmptyShould(true)
                .check(CLASSES);
    }
}
