package org.taperwright.comparer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import javax.swing.AbstractButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.workbench.ui.Plot;
import org.taperwright.workbench.ui.XyPlot;

class SweepAndTornadoTest {
    private OpenPanel open;

    @BeforeEach
    void open() throws InterruptedException {
        open = OpenPanel.of(SampleDesigns.library());
    }

    @AfterEach
    void close() {
        open.close();
    }

    /** A thicker blade of the same taper is stiffer and stronger. */
    @Test
    void a_sweep_over_the_tips_diameter_lowers_flexibility_and_raises_the_torque_at_fracture()
            throws InterruptedException {
        open.perform(
                () -> open.find("comparison.sweep.run", AbstractButton.class).doClick());
        Plot plot = open.find("comparison.sweep.plot", XyPlot.class).plot();

        assertThat(plot.x().heading()).isEqualTo("Diameter at the tip (mm)");
        assertThat(plot.curves()).hasSize(3);
        Plot.Curve flexibility = curve(plot, "Flexibility");
        Plot.Curve torque = curve(plot, "Torque at fracture");
        assertThat(flexibility.spots())
                .hasSizeGreaterThan(10)
                .isSortedAccordingTo((a, b) -> Double.compare(b.y(), a.y()));
        assertThat(torque.spots()).isSortedAccordingTo((a, b) -> Double.compare(a.y(), b.y()));
        assertThat(plot.rules())
                .singleElement()
                .satisfies(rule -> assertThat(rule.at()).isEqualTo(0.25));
    }

    @Test
    void the_tornado_names_the_parameters_that_move_the_metric_widest_first() throws InterruptedException {
        open.perform(
                () -> open.find("comparison.tornado.run", AbstractButton.class).doClick());
        TornadoDrawing drawing = open.find("comparison.tornado.drawing", TornadoDrawing.class);

        assertThat(drawing.getAccessibleContext().getAccessibleDescription())
                .contains("Alloy: ", "Diameter at the tip: ", "Taper: ");
    }

    private static Plot.Curve curve(Plot plot, String name) {
        return plot.curves().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
