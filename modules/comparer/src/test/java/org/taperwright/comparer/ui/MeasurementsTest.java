package org.taperwright.comparer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.swing.AbstractButton;
import javax.swing.JCheckBox;
import javax.swing.JTextArea;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.taperwright.library.exchange.bench.BenchTable;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.MeasuredOn;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.workbench.ui.Gestures;
import org.taperwright.workbench.ui.Plot;
import org.taperwright.workbench.ui.Shots;
import org.taperwright.workbench.ui.XyPlot;

class MeasurementsTest {
    @TempDir
    Path folder;

    private OpenPanel open;

    @BeforeEach
    void open() throws InterruptedException {
        open = OpenPanel.of(SampleDesigns.library());
    }

    @AfterEach
    void close() {
        open.close();
    }

    @Test
    void a_table_of_measurements_is_laid_over_the_curve_of_its_test() throws IOException, InterruptedException {
        Path file = folder.resolve("bench.csv");
        Files.writeString(file, "angle (°),moment (N·mm)\n10,3.1\n20,5.8\n30,n/a\n45,9.9\n");
        open.perform(() -> open.find("comparison.curves", CurvesFigure.class).read(file));

        Plot plot = open.find("comparison.bending", XyPlot.class).plot();
        Plot.Curve spots = plot.curves().stream()
                .filter(curve -> curve.style() == Plot.Style.SPOTS)
                .findFirst()
                .orElseThrow();
        assertThat(spots.name()).isEqualTo("bench.csv (measured)");
        assertThat(spots.spots())
                .containsExactly(new Plot.Spot(10, 3.1), new Plot.Spot(20, 5.8), new Plot.Spot(45, 9.9));
        assertThat(open.find("comparison.measured.said", JTextComponent.class).getText())
                .startsWith("Passed over: line 4, column 4: moment: \"n/a\" is no number");
    }

    @Test
    void measurements_stay_with_the_comparison_and_undo_takes_them_back() throws IOException, InterruptedException {
        Path file = folder.resolve("tubes.csv");
        Files.writeString(file, "radius,angle,cycles\n5,60,412\n8,60,1250\n");
        open.perform(() -> open.find("comparison.curves", CurvesFigure.class).read(file));

        assertThat(open.comparison().measured()).singleElement().satisfies(each -> {
            assertThat(each.design()).isEqualTo(SampleDesigns.STEEL);
            assertThat(each.measured().label()).isEqualTo("tubes.csv");
        });
        assertThat(open.desk().nextUndo()).contains("Measurements tubes.csv");

        open.perform(open.desk()::undo);
        assertThat(open.comparison().measured()).isEmpty();
        assertThat(open.find("comparison.lives", XyPlot.class).plot().curves())
                .noneMatch(curve -> curve.style() == Plot.Style.SPOTS);
        open.perform(open.desk()::redo);
        assertThat(open.find("comparison.lives", XyPlot.class).plot().curves())
                .anyMatch(curve -> curve.style() == Plot.Style.SPOTS);
    }

    @Test
    void a_table_that_says_nothing_is_refused_in_words() throws IOException, InterruptedException {
        Path file = folder.resolve("bench.csv");
        Files.writeString(file, "force,time\n1,2\n");
        open.perform(() -> open.find("comparison.curves", CurvesFigure.class).read(file));

        assertThat(open.find("comparison.measured.said", JTextComponent.class).getText())
                .contains("line 1, column 1", "do not say what was measured");
    }

    /** The curve computed of the design itself, with every moment a tenth higher: the modulus fits it a tenth higher. */
    @Test
    void the_fit_gives_a_new_alloy_with_its_constants_and_their_errors() throws IOException, InterruptedException {
        Compared compared = open.model().compared().orElseThrow();
        Assessment niti = compared.assessment(1).orElseThrow();
        StringBuilder table = new StringBuilder("angle,moment\n");
        niti.bending().curve().stream()
                .filter(point -> point.angleDeg() > 0)
                .forEach(point ->
                        table.append(String.format(Locale.ROOT, "%s,%s%n", point.angleDeg(), 1.1 * point.momentNmm())));
        BenchTable read = MeasurementFile.read(table.toString().getBytes(StandardCharsets.UTF_8), "made up");
        MeasuredOn measured = new MeasuredOn(SampleDesigns.NITI, ((BenchTable.Read) read).measured());
        FitPane pane = Shots.onEventThread(() -> new FitPane(open.desk(), compared, List.of(measured)));
        open.perform(() -> {
            find(pane, "comparison.fit.youngMpa", JCheckBox.class).doClick();
            find(pane, "comparison.fit.yieldMpa", JCheckBox.class).doClick();
            find(pane, "comparison.fit.run", AbstractButton.class).doClick();
        });

        String words = find(pane, "comparison.fit.result", JTextArea.class).getText();
        assertThat(words)
                .startsWith("Superelastic NiTi (austenitic), fitted: a new alloy")
                .contains("Young's modulus: 4", "(before: 42500", "Correlation of Young's modulus");

        open.perform(() -> {
            find(pane, "comparison.fit.name", JTextComponent.class).setText("Bench wire");
            find(pane, "comparison.fit.copy", JCheckBox.class).setSelected(true);
            find(pane, "comparison.fit.keep", AbstractButton.class).doClick();
        });
        Entry alloy = open.desk().snapshot().ofKind(ThingKind.ALLOY).get(0);
        assertThat(alloy.name()).isEqualTo("Bench wire");
        assertThat(alloy.id()).isEqualTo(new ThingId("bench-wire"));
        assertThat(open.desk().snapshot().ofKind(ThingKind.DESIGN))
                .extracting(Entry::thing)
                .filteredOn(
                        design -> ((Design) design).alloy().equals(alloy.id().value()))
                .singleElement()
                .satisfies(design -> assertThat(((Design) design).name()).endsWith(", Bench wire"));
        assertThat(open.desk().nextUndo()).contains("Keep alloy Bench wire");
        open.perform(open.desk()::undo);
        assertThat(open.desk().snapshot().ofKind(ThingKind.ALLOY)).isEmpty();
    }

    @Test
    void a_toggle_takes_a_design_off_the_overlays_and_brings_it_back() throws InterruptedException {
        JCheckBox toggle = open.find("comparison.overlay." + SampleDesigns.STEEL.value(), JCheckBox.class);
        open.perform(toggle::doClick);
        assertThat(open.find("comparison.twisting", XyPlot.class).plot().curves())
                .hasSize(2);
        assertThat(open.find("comparison.lives", XyPlot.class).plot().curves()).hasSize(2);

        open.perform(toggle::doClick);
        assertThat(open.find("comparison.twisting", XyPlot.class).plot().curves())
                .hasSize(3);
    }

    private static <T extends Component> T find(Container in, String name, Class<T> type) {
        return Gestures.named(in, name, type);
    }
}
