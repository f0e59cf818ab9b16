package org.taperwright.application;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarFile;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Who may know whom in the modules; the shared jars have rules of their own beside them. */
class ArchitectureTest {
    private static final String[] PLATFORM = {"org.openide..", "org.netbeans.."};
    private static final List<String> FEATURES = List.of("catalogue", "designer", "comparer", "sequencer", "kit");

    private static JavaClasses modules;

    @BeforeAll
    static void readTheModules() throws IOException {
        List<JarFile> jars = new ArrayList<>();
        for (Path jar : BuiltJars.modules()) {
            jars.add(new JarFile(jar.toFile()));
        }
        modules = new ClassFileImporter().importJars(jars);
        for (JarFile jar : jars) {
            jar.close();
        }
    }

    @Test
    void everyFeatureIsWatchedHere() throws IOException {
        List<String> features = BuiltJars.modules().stream()
                .map(jar -> jar.getFileName().toString().replaceAll("org-taperwright-|\\.jar", ""))
                .filter(name -> !List.of("branding", "engine", "workbench").contains(name))
                .toList();
        assertThat(features).containsExactlyInAnyOrderElementsOf(FEATURES);
    }

    @Test
    void panelsHoldNoClassOfThePlatform() {
        noClasses()
                .that()
                .resideInAnyPackage(
                        "org.taperwright..ui..", "org.taperwright.workbench.api..", "org.taperwright.workbench.desk..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(PLATFORM)
                .because("every panel opens in a bare frame")
                .check(modules);
    }

    @Test
    void featuresDoNotSeeEachOther() {
        slices().matching("org.taperwright.(catalogue|designer|comparer|sequencer|kit)..")
                .should()
                .notDependOnEachOther()
                .check(modules);
    }

    @Test
    void theWorkbenchDoesNotKnowItsFeatures() {
        noClasses()
                .that()
                .resideInAPackage("org.taperwright.workbench..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(FEATURES.stream()
                        .map(feature -> "org.taperwright." + feature + "..")
                        .toArray(String[]::new))
                .check(modules);
    }

    @Test
    void panelsDoNotReachForTheAdapters() {
        noClasses()
                .that()
                .resideInAnyPackage("org.taperwright..ui..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.taperwright.workbench.platform..")
                .check(modules);
    }
}
