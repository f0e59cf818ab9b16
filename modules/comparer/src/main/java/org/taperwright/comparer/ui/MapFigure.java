package org.taperwright.comparer.ui;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.Metrics;
import org.taperwright.mechanics.comparison.TradeOff;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Spacing;

/** The map with the choice of its axes, of what its markers' size shows, and the catalogue behind it. */
final class MapFigure extends JPanel {
    private static final int FIELD = 130;

    private final transient Desk desk;
    private final TradeOffMap map = new TradeOffMap();
    private final ChoiceField<Metric> up = choice("comparison.map.up", "Metric of the upright axis");
    private final ChoiceField<Metric> across = choice("comparison.map.across", "Metric of the axis across");
    private final ChoiceField<Optional<Metric>> size;
    private final JCheckBox behind = new JCheckBox("Catalogue behind");
    private final transient Object cloudSlot = new Object();
    private transient Optional<Compared> compared = Optional.empty();
    private transient List<SeriesLook> looks = List.of();
    private transient MapAxes axes = MapAxes.USUAL;
    private transient Cloud cloud = Cloud.NONE;

    MapFigure(Desk desk) {
        super(new BorderLayout());
        this.desk = desk;
        setOpaque(false);
        List<Optional<Metric>> sizes = new ArrayList<>(List.of(Optional.empty()));
        Metrics.all().forEach(metric -> sizes.add(Optional.of(metric)));
        size = new ChoiceField<>(
                "comparison.map.size",
                "Metric that a marker's size goes with",
                sizes,
                metric -> metric.map(Metric::label).orElse("all alike"));
        up.setValue(axes.up());
        across.setValue(axes.across());
        size.setValue(axes.size());
        up.onCommit(metric -> choose(new MapAxes(axes.across(), metric, axes.size())));
        across.onCommit(metric -> choose(new MapAxes(metric, axes.up(), axes.size())));
        size.onCommit(metric -> choose(new MapAxes(axes.across(), axes.up(), metric)));
        behind.setName("comparison.map.cloud");
        behind.setOpaque(false);
        behind.setToolTipText("Shows the catalogue's instruments as pale dots; computing them all takes a while");
        behind.addActionListener(event -> cloudWanted());
        map.onOpen(desk::open);
        add(choices(), BorderLayout.NORTH);
        add(map, BorderLayout.CENTER);
    }

    private static ChoiceField<Metric> choice(String name, String what) {
        return new ChoiceField<>(name, what, Metrics.all(), Metric::label);
    }

    private JPanel choices() {
        JPanel row = new JPanel(new WrappingRow(Spacing.NEAR));
        row.setOpaque(false);
        row.setBorder(Spacing.around(Spacing.NEAR, Spacing.NEAR));
        row.add(pair("Up", up));
        row.add(pair("Across", across));
        row.add(pair("Size", size));
        row.add(behind);
        return row;
    }

    private static JPanel pair(String words, ChoiceField<?> field) {
        JPanel pair = new JPanel(new FlowLayout(FlowLayout.LEADING, Spacing.TIGHT, 0));
        pair.setOpaque(false);
        JLabel label = new JLabel(words);
        label.setLabelFor(field);
        field.setPreferredSize(new Dimension(FIELD, field.getPreferredSize().height));
        pair.add(label);
        pair.add(field);
        return pair;
    }

    /** Shows a result. */
    void show(Compared newCompared, List<SeriesLook> newLooks) {
        compared = Optional.of(newCompared);
        looks = List.copyOf(newLooks);
        draw();
    }

    /** Shows where a design has been while a parameter was moved. */
    void showPath(List<Map<Metric, Double>> ratios, SeriesLook look) {
        List<Point2D> places = new ArrayList<>();
        for (Map<Metric, Double> each : ratios) {
            double x = each.getOrDefault(axes.across(), 0.0);
            double y = each.getOrDefault(axes.up(), 0.0);
            if (x > 0 && y > 0) {
                places.add(new Point2D.Double(x, y));
            }
        }
        map.showPath(places, look);
    }

    void setRemark(String words) {
        map.setRemark(words);
    }

    private void choose(MapAxes newAxes) {
        axes = newAxes;
        draw();
    }

    private void draw() {
        Optional<Comparison> comparison = compared.flatMap(Compared::comparison);
        Optional<TradeOff> known = comparison
                .map(Comparison::tradeOff)
                .filter(tradeOff -> tradeOff.first().equals(axes.across())
                        && tradeOff.second().equals(axes.up()));
        show(known);
        if (known.isEmpty() && comparison.isPresent()) {
            List<Assessment> columns = comparison.get().columns();
            MapAxes asked = axes;
            desk.compute(
                    map,
                    "Trade-off of the map",
                    progress -> TradeOff.of(columns, asked.across(), asked.up()),
                    outcome -> {
                        if (outcome instanceof Outcome.Current<TradeOff> current && asked.equals(axes)) {
                            show(Optional.of(current.value()));
                        }
                    });
        }
    }

    private void show(Optional<TradeOff> tradeOff) {
        compared.ifPresent(shown -> map.show(MapPoint.of(shown, looks, axes, tradeOff), axes));
        drawCloud();
    }

    private void drawCloud() {
        map.showCloud(behind.isSelected() ? cloud : Cloud.NONE, datum(axes.across()), datum(axes.up()));
    }

    private double datum(Metric metric) {
        return compared.flatMap(Compared::comparison).stream()
                .flatMap(comparison -> comparison.rows().stream()
                        .filter(row -> row.metric().equals(metric))
                        .map(row ->
                                row.cells().get(comparison.datum()).reading().value()))
                .findFirst()
                .orElse(0.0);
    }

    private void cloudWanted() {
        drawCloud();
        if (behind.isSelected() && cloud.entries().isEmpty()) {
            desk.compute(cloudSlot, "Catalogue behind the map", new CloudWork(desk.snapshot()), outcome -> {
                if (outcome instanceof Outcome.Current<Cloud> current) {
                    cloud = current.value();
                    drawCloud();
                } else {
                    behind.setSelected(false);
                }
            });
        }
    }
}
