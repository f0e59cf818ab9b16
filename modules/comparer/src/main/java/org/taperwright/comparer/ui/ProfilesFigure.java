package org.taperwright.comparer.ui;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javax.swing.JPanel;
import org.taperwright.mechanics.properties.ProfilePoint;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.Plot;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.XyPlot;

/** One quantity of every design along the blade, chosen from those the profile holds. */
final class ProfilesFigure extends JPanel {
    /** A quantity along the blade. */
    private record Quantity(String title, String unit, ToDoubleFunction<ProfilePoint> value) {}

    private static final List<Quantity> QUANTITIES = List.of(
            new Quantity("Diameter", "mm", ProfilePoint::diameterMm),
            new Quantity("Bending stiffness EI", "N·mm²", ProfilePoint::bendingStiffnessNmm2),
            new Quantity("Torsional stiffness GJ", "N·mm²", ProfilePoint::torsionalStiffnessNmm2),
            new Quantity("Fully plastic torque", "N·mm", ProfilePoint::plasticTorqueNmm),
            new Quantity("Core diameter", "mm", ProfilePoint::coreMm),
            new Quantity("Chip space", "mm²", ProfilePoint::chipSpaceMm2),
            new Quantity("Helix angle from the axis", "°", ProfilePoint::helixAngleDeg));

    private final XyPlot plot = new XyPlot("comparison.profiles", "Along the blade");
    private final ChoiceField<Quantity> choice =
            new ChoiceField<>("comparison.profile", "Quantity along the blade", QUANTITIES, Quantity::title);
    private Quantity quantity = QUANTITIES.get(0);
    private Optional<Compared> compared = Optional.empty();
    private List<SeriesLook> looks = List.of();

    ProfilesFigure() {
        super(new BorderLayout());
        setOpaque(false);
        choice.setValue(quantity);
        choice.onCommit(chosen -> {
            quantity = chosen;
            draw();
        });
        JPanel top = new JPanel(new BorderLayout());
        top.setOpaque(false);
        top.setBorder(Spacing.around(Spacing.NEAR, Spacing.NEAR));
        top.add(choice, BorderLayout.LINE_START);
        add(top, BorderLayout.NORTH);
        add(plot, BorderLayout.CENTER);
    }

    void show(Compared newCompared, List<SeriesLook> newLooks) {
        compared = Optional.of(newCompared);
        looks = newLooks;
        draw();
    }

    void setRemark(String words) {
        plot.setRemark(words);
    }

    private void draw() {
        List<Plot.Curve> curves = new ArrayList<>();
        compared.ifPresent(shown -> {
            for (int i = 0; i < shown.members().size(); i++) {
                String name = shown.members().get(i).name();
                SeriesLook look = looks.get(i);
                shown.assessment(i)
                        .ifPresent(assessment -> curves.add(new Plot.Curve(
                                name,
                                look,
                                Plot.Style.LINE,
                                assessment.profile().points().stream()
                                        .map(point -> new Plot.Spot(
                                                point.levelMm(),
                                                quantity.value().applyAsDouble(point)))
                                        .toList())));
            }
        });
        plot.setPlot(Plot.of(
                Plot.Axis.of("Level from the tip", "mm"), Plot.Axis.of(quantity.title(), quantity.unit()), curves));
    }
}
