package org.taperwright.comparer.ui;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javax.swing.JPanel;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.assessment.BenchBands;
import org.taperwright.mechanics.bench.spread.TwistingSpread;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.properties.ProfilePoint;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.Plot;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.XyPlot;

/** One quantity of every design along the blade, chosen from those the profile holds; an estimate with its band. */
final class ProfilesFigure extends JPanel {
    /** A quantity along the blade. */
    private record Quantity(String title, String unit, ToDoubleFunction<ProfilePoint> value) {
        /** Whether it hangs on the alloy's yield, as the fully plastic torque alone does. */
        boolean estimated() {
            return this == PLASTIC_TORQUE;
        }
    }

    private static final Quantity PLASTIC_TORQUE =
            new Quantity("Fully plastic torque (estimate)", "N·mm", ProfilePoint::plasticTorqueNmm);

    private static final List<Quantity> QUANTITIES = List.of(
            new Quantity("Diameter", "mm", ProfilePoint::diameterMm),
            new Quantity("Bending stiffness EI", "N·mm²", ProfilePoint::bendingStiffnessNmm2),
            new Quantity("Torsional stiffness GJ", "N·mm²", ProfilePoint::torsionalStiffnessNmm2),
            PLASTIC_TORQUE,
            new Quantity("Core diameter", "mm", ProfilePoint::coreMm),
            new Quantity("Chip space", "mm²", ProfilePoint::chipSpaceMm2),
            new Quantity("Helix angle from the axis", "°", ProfilePoint::helixAngleDeg));

    private final transient Desk desk;
    private final XyPlot plot = new XyPlot("comparison.profiles", "Along the blade");
    private final ChoiceField<Quantity> choice =
            new ChoiceField<>("comparison.profile", "Quantity along the blade", QUANTITIES, Quantity::title);
    private Quantity quantity = QUANTITIES.get(0);
    private Optional<Compared> compared = Optional.empty();
    private List<SeriesLook> looks = List.of();

    ProfilesFigure(Desk desk) {
        super(new BorderLayout());
        this.desk = desk;
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

    /** Shows the quantity along the blade that a metric comes from. */
    void showBehind(Metric metric) {
        quantity = QUANTITIES.get(
                switch (metric.id()) {
                    case "core-share" -> 4;
                    case "chip-space", "flute-room-filled" -> 5;
                    case "helix-angle", "normal-rake", "flutes-per-mm" -> 6;
                    default ->
                        switch (metric.group()) {
                            case FLEXIBILITY -> 1;
                            case TORSION -> metric.id().equals("torsional-stiffness") ? 2 : 3;
                            case CUTTING, FATIGUE, GUIDANCE -> 0;
                        };
                });
        choice.setValue(quantity);
        draw();
    }

    void setRemark(String words) {
        plot.setRemark(words);
    }

    private void draw() {
        compared.ifPresent(shown -> {
            draw(shown, List.of());
            if (quantity.estimated()) {
                Quantity asked = quantity;
                List<SeriesLook> dressed = looks;
                desk.compute(this, "Bands along the blade", progress -> bands(shown, dressed, progress), outcome -> {
                    if (outcome instanceof Outcome.Current<List<Plot.Band>> current
                            && asked == quantity
                            && compared.filter(still -> still == shown).isPresent()) {
                        draw(shown, current.value());
                    }
                });
            }
        });
    }

    private void draw(Compared shown, List<Plot.Band> bands) {
        List<Plot.Curve> curves = new ArrayList<>();
        for (int i = 0; i < shown.members().size(); i++) {
            String name = shown.members().get(i).name();
            SeriesLook look = looks.get(i);
            shown.assessment(i)
                    .ifPresent(assessment -> curves.add(new Plot.Curve(
                            name,
                            look,
                            Plot.Style.LINE,
                            spots(assessment.profile().points(), quantity.value()))));
        }
        plot.setPlot(new Plot(
                Plot.Axis.of("Level from the tip", "mm"),
                Plot.Axis.of(quantity.title(), quantity.unit()),
                curves,
                bands,
                List.of()));
    }

    private static List<Plot.Band> bands(Compared shown, List<SeriesLook> looks, Progress progress) {
        List<Plot.Band> bands = new ArrayList<>();
        for (int i = 0; i < shown.members().size(); i++) {
            progress.check();
            Optional<Assessment> assessment = shown.assessment(i);
            Optional<BenchBands> known = shown.bands().get(i);
            if (assessment.isPresent() && known.isPresent()) {
                List<ProfilePoint> points = assessment.get().profile().points();
                List<Band> torques = points.stream()
                        .map(point -> torque(point, known.get().twisting()))
                        .toList();
                bands.add(new Plot.Band(
                        shown.members().get(i).name() + ", 5 to 95 %",
                        looks.get(i),
                        edge(points, torques, Band::low),
                        edge(points, torques, Band::high)));
            }
        }
        return bands;
    }

    private static List<Plot.Spot> edge(List<ProfilePoint> points, List<Band> torques, ToDoubleFunction<Band> which) {
        List<Plot.Spot> edge = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            edge.add(new Plot.Spot(points.get(i).levelMm(), which.applyAsDouble(torques.get(i))));
        }
        return edge;
    }

    private static Band torque(ProfilePoint point, TwistingSpread twisting) {
        double torque = point.plasticTorqueNmm();
        return twisting.likePlastic(torque).band().orElseGet(() -> new Band(torque, torque));
    }

    private static List<Plot.Spot> spots(List<ProfilePoint> points, ToDoubleFunction<ProfilePoint> value) {
        return points.stream()
                .map(point -> new Plot.Spot(point.levelMm(), value.applyAsDouble(point)))
                .toList();
    }
}
