package org.taperwright.command;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import org.jspecify.annotations.NullMarked;

/** The rules of the house that hold for all plain Java storeys. */
@AnalyzeClasses(packages = "org.taperwright", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    @ArchTest
    static final ArchRule STOREYS_LOOK_ONLY_DOWN = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("mechanics")
            .definedBy("org.taperwright.mechanics..")
            .layer("shaping")
            .definedBy("org.taperwright.shaping..")
            .layer("library")
            .definedBy("org.taperwright.library..")
            .layer("command")
            .definedBy("org.taperwright.command..")
            .whereLayer("command")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("library")
            .mayOnlyBeAccessedByLayers("command")
            .whereLayer("shaping")
            .mayOnlyBeAccessedByLayers("library", "command")
            .whereLayer("mechanics")
            .mayOnlyBeAccessedByLayers("shaping", "library", "command");

    @ArchTest
    static final ArchRule PACKAGES_HAVE_NO_CYCLES =
            slices().matching("org.taperwright.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule NO_WINDOWS_BELOW = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.awt..", "javax.swing..", "org.openide..", "org.netbeans..")
            .because("shared code is usable without a display and without the platform");

    @ArchTest
    static final ArchRule NOTHING_BUT_THE_STORE_KNOWS_A_NETWORK = noClasses()
            .that()
            .resideOutsideOfPackage("org.taperwright.library.store")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.net..", "javax.net..", "java.rmi..")
            .because("the one connection that is opened is that to the server whom the user named");

    @ArchTest
    static final ArchRule ONLY_THE_COMMAND_LINE_SPEAKS_TO_THE_TERMINAL = noClasses()
            .that()
            .resideOutsideOfPackage("org.taperwright.command")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .callMethod(System.class, "exit", int.class);

    @ArchTest
    static final ArchRule NAMES_SAY_WHAT_A_THING_IS = noClasses()
            .should()
            .haveSimpleNameEndingWith("Manager")
            .orShould()
            .haveSimpleNameEndingWith("Util")
            .orShould()
            .haveSimpleNameEndingWith("Utils")
            .orShould()
            .haveSimpleNameEndingWith("Impl")
            .orShould()
            .haveSimpleNameEndingWith("Helper")
            .orShould()
            .haveSimpleNameEndingWith("Data");

    @ArchTest
    static final ArchRule NOTHING_STATIC_CHANGES =
            fields().that().areStatic().should().beFinal().because("mutable statics tie computations together");

    @ArchTest
    static final ArchRule PUBLIC_TYPES_KNOW_NO_NULL =
            classes().that().arePublic().should(beInANullMarkedPackage());

    private static ArchCondition<JavaClass> beInANullMarkedPackage() {
        return new ArchCondition<>("be in a package marked @NullMarked") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                boolean marked = type.getPackage().isAnnotatedWith(NullMarked.class);
                events.add(new SimpleConditionEvent(
                        type, marked, type.getName() + (marked ? " is" : " is not") + " marked"));
            }
        };
    }
}
