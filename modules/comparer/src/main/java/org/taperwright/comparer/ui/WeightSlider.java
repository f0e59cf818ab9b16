package org.taperwright.comparer.ui;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.function.ObjDoubleConsumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.workbench.ui.Spacing;

/** A metric's weight from 0 to 5 in tenths, told when it is let go. */
final class WeightSlider extends JPanel {
    private static final int PER_ONE = 10;
    private static final int MOST = 5;

    private final JSlider slider = new JSlider(0, MOST * PER_ONE, 0);
    private final JLabel number = new JLabel("0");
    private boolean quiet;

    WeightSlider(Metric metric, ObjDoubleConsumer<Metric> weigh) {
        super(new BorderLayout(Spacing.NEAR, 0));
        setOpaque(false);
        slider.setName("comparison.score.weight." + metric.id());
        slider.setOpaque(false);
        slider.getAccessibleContext().setAccessibleName("Weight of " + metric.label());
        slider.setPreferredSize(new Dimension(110, slider.getPreferredSize().height));
        number.setPreferredSize(
                new Dimension(number.getFontMetrics(number.getFont()).stringWidth("0.00"), 10));
        slider.addChangeListener(event -> {
            number.setText(Shown.number(weight()));
            if (!quiet && !slider.getValueIsAdjusting()) {
                weigh.accept(metric, weight());
            }
        });
        add(slider, BorderLayout.CENTER);
        add(number, BorderLayout.LINE_END);
    }

    /** Shows a weight without telling anyone. */
    void setWeight(double weight) {
        if (!slider.getValueIsAdjusting()) {
            quiet = true;
            slider.setValue((int) Math.round(weight * PER_ONE));
            number.setText(Shown.number(weight));
            quiet = false;
        }
    }

    private double weight() {
        return (double) slider.getValue() / PER_ONE;
    }
}
