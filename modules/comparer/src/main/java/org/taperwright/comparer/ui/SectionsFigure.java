package org.taperwright.comparer.ui;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Spacing;

/** Sections of every design at one level, laid over each other to one scale or to one diameter. */
final class SectionsFigure extends JPanel {
    private static final int STEPS_PER_MM = 2;
    private static final int INITIAL_MM = 3;
    private static final int SLIDER = 80;

    private final transient Desk desk;
    private final SectionsDrawing drawing = new SectionsDrawing();
    private final JSlider level = new JSlider(0, 16 * STEPS_PER_MM, INITIAL_MM * STEPS_PER_MM);
    private final JLabel levelWords = new JLabel();
    private final JCheckBox oneDiameter = new JCheckBox("Same diameter");
    private Optional<Compared> compared = Optional.empty();
    private List<SeriesLook> looks = List.of();

    SectionsFigure(Desk desk) {
        super(new BorderLayout());
        this.desk = desk;
        setOpaque(false);
        level.setName("comparison.level");
        level.getAccessibleContext().setAccessibleName("Level of the sections, from the tip");
        level.setOpaque(false);
        level.addChangeListener(event -> draw());
        oneDiameter.setName("comparison.oneDiameter");
        oneDiameter.setOpaque(false);
        oneDiameter.setToolTipText("Draws every section with the same circumscribed circle, to compare shapes alone");
        oneDiameter.addActionListener(event -> draw());
        JPanel top = new JPanel(new BorderLayout(Spacing.NEAR, 0));
        top.setOpaque(false);
        top.setBorder(Spacing.around(Spacing.NEAR, Spacing.NEAR));
        level.setPreferredSize(new Dimension(SLIDER, level.getPreferredSize().height));
        top.add(levelWords, BorderLayout.LINE_START);
        top.add(level, BorderLayout.CENTER);
        top.add(oneDiameter, BorderLayout.LINE_END);
        add(top, BorderLayout.NORTH);
        add(drawing, BorderLayout.CENTER);
        sayLevel();
    }

    void show(Compared newCompared, List<SeriesLook> newLooks) {
        compared = Optional.of(newCompared);
        looks = List.copyOf(newLooks);
        double longest = 0;
        for (int i = 0; i < newCompared.members().size(); i++) {
            longest = Math.max(
                    longest,
                    newCompared
                            .assessment(i)
                            .map(a -> a.design().workingPartMm())
                            .orElse(0.0));
        }
        level.setMaximum((int) Math.floor(Math.max(1, longest) * STEPS_PER_MM));
        draw();
    }

    void setRemark(String words) {
        drawing.setRemark(words);
    }

    private double levelMm() {
        return (double) level.getValue() / STEPS_PER_MM;
    }

    private void sayLevel() {
        levelWords.setText(String.format(Locale.ROOT, "%.1f mm from the tip", levelMm()));
    }

    private void draw() {
        sayLevel();
        compared.ifPresent(shown -> desk.compute(
                this,
                "Drawing sections",
                new SectionsWork(shown, looks, levelMm(), oneDiameter.isSelected()),
                outcome -> {
                    if (outcome instanceof Outcome.Current<SectionsWork.Drawn> current) {
                        drawing.show(current.value());
                    }
                }));
    }
}
