package org.taperwright.library;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** Who may know whom in the library. */
class ArchitectureTest {
    private static final JavaClasses LIBRARY = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.taperwright.library");

    @Test
    void packagesAreFreeOfCycles() {
        slices().matching("org.taperwright.library.(**)")
                .should()
                .beFreeOfCycles()
                .check(LIBRARY);
    }

    @Test
    void onlyTheStoreKnowsDatabases() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.taperwright.library.store..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "java.sql..", "javax.sql..", "org.jdbi..", "org.flywaydb..", "org.sqlite..", "org.postgresql..")
                .check(LIBRARY);
    }

    @Test
    void onlyOnePackageKnowsTheJsonParser() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.taperwright.library.exchange.json..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("com.fasterxml..")
                .check(LIBRARY);
    }

    @Test
    void theStoreKnowsNoFormsAndNoHistory() {
        noClasses()
                .that()
                .resideInAPackage("org.taperwright.library.store..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.taperwright.library.exchange..", "org.taperwright.library.history..")
                .check(LIBRARY);
    }

    @Test
    void nothingDrawsOrKnowsThePlatform() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.awt..", "javax.swing..", "org.openide..", "org.netbeans..")
                .check(LIBRARY);
    }
}
