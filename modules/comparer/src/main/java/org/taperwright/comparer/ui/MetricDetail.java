package org.taperwright.comparer.ui;

import java.awt.BorderLayout;
import java.util.Optional;
import javax.swing.JPanel;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.workbench.ui.Heading;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.StandingMark;

/** What the selected metric is, the formula it comes from, its source and how far it may be trusted. */
final class MetricDetail extends JPanel {
    private final Heading heading = new Heading(" ");
    private final Prose text = new Prose("", Ink::text, false);

    MetricDetail() {
        super(new BorderLayout(0, Spacing.TIGHT));
        setName("comparison.detail");
        setOpaque(false);
        setBorder(Spacing.around(Spacing.NEAR, Spacing.NEAR));
        text.setName("comparison.detail.text");
        add(heading, BorderLayout.NORTH);
        add(text, BorderLayout.CENTER);
        show(Optional.empty(), "", "");
    }

    /**
     * Explains a metric, or says how to choose one.
     *
     * @param ratios the ratios to the datum with their bands in words; empty where there is none
     * @param inputs what it was computed from, in words
     */
    void show(Optional<Metric> metric, String ratios, String inputs) {
        heading.setText(metric.map(MetricDetail::title).orElse("Where a number comes from"));
        String line = ratios.isEmpty() ? "" : "\nRatios to the datum, 5 to 95 % in brackets: " + ratios + ".";
        text.setText(metric.map(chosen -> explanation(chosen) + "\nInputs: " + inputs + line)
                .orElse(
                        "Select a row to read what it means, its formula and its source. A line over a bar's end spans 5 to 95 % "
                                + "of the ratio; what two designs share cancels in it."));
        revalidate();
        repaint();
    }

    private static String title(Metric metric) {
        return metric.unit().isEmpty() ? metric.label() : metric.label() + ", " + metric.unit();
    }

    private static String explanation(Metric metric) {
        return metric.explanation() + "\nSource: " + metric.source() + "\n"
                + StandingMark.explanation(metric.standing());
    }
}
