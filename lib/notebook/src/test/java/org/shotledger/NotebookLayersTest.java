package org.shotledger;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.shotledger", importOptions = ImportOption.DoNotIncludeTests.class)
class NotebookLayersTest {

    @ArchTest
    static final ArchRule displayKnowsNothingOfTheProject = noClasses()
            .that()
            .resideInAPackage("org.shotledger.display")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "org.shotledger.table..",
                    "org.shotledger.chart..",
                    "org.shotledger.document..",
                    "org.shotledger.view..",
                    "org.shotledger.session..",
                    "org.shotledger.budget..",
                    "org.shotledger.units..");

    @ArchTest
    static final ArchRule tablesAndChartsKnowNotEachOther = noClasses()
            .that()
            .resideInAPackage("org.shotledger.table")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.shotledger.chart..", "org.shotledger.document..", "org.shotledger.view..");

    @ArchTest
    static final ArchRule chartsKnowNoResultOfTheCoreButLimits = noClasses()
            .that()
            .resideInAPackage("org.shotledger.chart")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "org.shotledger.table..",
                    "org.shotledger.document..",
                    "org.shotledger.view..",
                    "org.shotledger.build..",
                    "org.shotledger.fluid..",
                    "org.shotledger.bottle..");

    @ArchTest
    static final ArchRule documentsKnowNoBudget = noClasses()
            .that()
            .resideInAPackage("org.shotledger.document")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.shotledger.view..", "org.shotledger.session..", "org.shotledger.build..");

    @ArchTest
    static final ArchRule nothingReachesUpToTheSession = noClasses()
            .that()
            .resideOutsideOfPackage("org.shotledger.session")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.shotledger.session");
}
