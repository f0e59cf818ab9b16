package org.taperwright.mechanics.comparison.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.bench.BenchDesigns;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.Metrics;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.section.FamilyParameter;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.mechanics.work.WorkCancelled;

class SweepTest {
    private static final Metric PLASTIC = metric("plastic-torque");
    private static final Metric FLEXIBILITY = metric("flexibility");
    private static final Metric CUTTING = metric("cutting");

    /** A blade of one diameter, so that powers of it can be read off. */
    private static final Design CYLINDER = BenchDesigns.of("square", 0.3, 0);

    /** Nadai's sand heap: the plastic torque goes with the cube of the diameter. */
    @Test
    void sweptOverItsDiameterABladesPlasticTorqueGoesWithTheCube() {
        Sweep sweep = Sweep.of(
                CYLINDER,
                KnownAlloys.SHIPPED,
                parameter(CYLINDER, "tipDiameterMm"),
                8,
                List.of(PLASTIC),
                Progress.NONE);
        double here = sweep.here().value(PLASTIC).orElseThrow();
        assertThat(sweep.points()).hasSize(8).allSatisfy(point -> {
            double ratio = point.value(PLASTIC).orElseThrow() / here;
            double cube = Math.pow(point.setting().place() / 0.3, 3);
            assertThat(ratio).isCloseTo(cube, within(1e-9 * cube));
        });
    }

    @Test
    void aTenthMoreAndLessOfTheDiameterMovesThePlasticTorqueByTheirCubes() {
        Tornado tornado = Tornado.of(CYLINDER, KnownAlloys.SHIPPED, List.of(PLASTIC, FLEXIBILITY), Progress.NONE);
        Swing size = tornado.by(PLASTIC).stream()
                .filter(swing -> swing.parameter().id().equals("tipDiameterMm"))
                .findFirst()
                .orElseThrow();
        double here = tornado.here().value(PLASTIC).orElseThrow();
        assertThat(size.reach(PLASTIC, tornado.here()).orElseThrow().low() / here)
                .isCloseTo(0.9 * 0.9 * 0.9, within(1e-9));
        assertThat(size.reach(PLASTIC, tornado.here()).orElseThrow().high() / here)
                .isCloseTo(1.1 * 1.1 * 1.1, within(1e-9));
        assertThat(tornado.by(PLASTIC))
                .extracting(swing -> swing.width(PLASTIC, tornado.here()))
                .isSortedAccordingTo((a, b) -> Double.compare(b, a));
        assertThat(tornado.by(PLASTIC))
                .as("motion has no part in it")
                .noneMatch(swing -> swing.parameter().id().equals("motion"));
    }

    @Test
    void everyDeclaredParameterOfASectionCanBeSweptOverItsDeclaredRange() {
        for (var family : Sections.families()) {
            if (family.takesPoints()) {
                continue;
            }
            Design design = BenchDesigns.of(family.id(), 0.25, 0.04);
            for (FamilyParameter declared : family.parameters()) {
                Amount amount = (Amount) parameter(design, "sections[0].shape.parameters." + declared.name());
                List<Setting> settings = amount.settings(design, 3);
                assertThat(settings.get(0).place()).isEqualTo(declared.least());
                assertThat(settings.get(settings.size() - 1).place()).isEqualTo(declared.most());
                assertThat(amount.value().applyAsDouble(settings.get(0).design()))
                        .isEqualTo(declared.least());
                assertThat(amount.value().applyAsDouble(design)).isEqualTo(declared.initial());
            }
        }
    }

    @Test
    void everyParameterChangesItsOwnFieldAndNoOther() {
        Design design = Designs.with(BenchDesigns.of("scalloped", 0.25, 0.04))
                .taper(List.of(new TaperSegment(0, 4, 0.06), new TaperSegment(4, 16, 0.03)))
                .design();
        List<DesignParameter> parameters = DesignParameters.of(design);
        assertThat(parameters)
                .extracting(DesignParameter::id)
                .doesNotHaveDuplicates()
                .contains(
                        "taper[0].taper",
                        "taper[1].taper",
                        "flutes[0].flutesPerMm",
                        "sections[0].shape.landWidth",
                        "sections[0].shape.edgeRounding",
                        "alloy",
                        "motion");
        for (DesignParameter moved : parameters) {
            for (Setting setting : moved.settings(design, 3)) {
                assertThat(moved.words(setting.design())).isEqualTo(setting.words());
                for (DesignParameter other : parameters) {
                    if (other != moved) {
                        assertThat(other.words(setting.design())).isEqualTo(other.words(design));
                    }
                }
            }
        }
    }

    @Test
    void aSettingThatCannotBeSaysWhyAndTheOthersHaveTheirValues() {
        Design design = BenchDesigns.of("triangle", 0.25, 0.04);
        Amount taper = (Amount) parameter(design, "taper[0].taper");
        Sweep sweep = Sweep.of(design, KnownAlloys.SHIPPED, taper, 2, List.of(CUTTING), Progress.NONE);
        assertThat(sweep.points().get(0).setting().place()).isEqualTo(-0.02);
        assertThat(sweep.points().get(0).value(CUTTING)).isEmpty();
        assertThat(sweep.points().get(0).faults()).isNotEmpty();
        assertThat(sweep.points().get(1).value(CUTTING)).isPresent();
    }

    @Test
    void aSweepReportsEveryPointAndStopsWhenItIsNoLongerWanted() {
        AtomicInteger reports = new AtomicInteger();
        Progress stopping = new Progress() {
            @Override
            public void at(double fraction, String what) {
                reports.incrementAndGet();
            }

            @Override
            public boolean cancelled() {
                return reports.get() >= 3;
            }
        };
        DesignParameter size = parameter(CYLINDER, "tipDiameterMm");
        assertThatThrownBy(() -> Sweep.of(CYLINDER, KnownAlloys.SHIPPED, size, 60, List.of(PLASTIC), stopping))
                .isInstanceOf(WorkCancelled.class);
        assertThat(reports.get()).isLessThan(60);
    }

    private static DesignParameter parameter(Design design, String id) {
        return DesignParameters.of(design).stream()
                .filter(parameter -> parameter.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Metric metric(String id) {
        return Metrics.find(id).orElseThrow();
    }
}
