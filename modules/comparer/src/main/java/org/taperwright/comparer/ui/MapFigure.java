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
import org.taperwright.mechanics.comparison.RatioEllipse;
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
    private final ChoiceField<Bands> bands =
            new ChoiceField<>("comparison.map.bands", "How bands are drawn", List.of(Bands.values()), Bands::words);
    private final JCheckBox behind = new JCheckBox("Catalogue behind", true);
    private final transient CatalogueBehind catalogue;
    private transient Optional<Compared> compared = Optional.empty();
    private transient List<SeriesLook> looks = List.of();
    private transient MapAxes axes = MapAxes.USUAL;
    private transient Optional<Spread> spread = Optional.empty();

    /** How the bands of the ratios are drawn. */
    private enum Bands {
        BARS("bars"),
        ELLIPSES("ellipses");

        private final String words;

        Bands(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /** What is sampled for the map's axes, and what for. */
    private record Spread(
            Comparison of, MapAxes axes, Bands bands, TradeOff tradeOff, List<Optional<RatioEllipse>> ellipses) {
        static Spread of(Comparison comparison, MapAxes axes, Bands bands) {
            TradeOff known = comparison.tradeOff();
            boolean usual =
                    known.first().equals(axes.across()) && known.second().equals(axes.up());
            TradeOff tradeOff = usual ? known : TradeOff.of(comparison.columns(), axes.across(), axes.up());
            Assessment datum = comparison.columns().get(comparison.datum());
            List<Optional<RatioEllipse>> ellipses = bands == Bands.BARS
                    ? List.of()
                    : comparison.columns().stream()
                            .map(column -> RatioEllipse.of(axes.across(), axes.up(), column, datum))
                            .toList();
            return new Spread(comparison, axes, bands, tradeOff, ellipses);
        }
    }

    MapFigure(Desk desk) {
        super(new BorderLayout());
        this.desk = desk;
        catalogue = new CatalogueBehind(desk, cloud -> drawCloud(), this::stopCatalogue);
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
        behind.setToolTipText("Shows the catalogue's instruments as pale dots, found in the background");
        behind.addActionListener(event -> followCatalogue());
        bands.setToolTipText("Bars: 5 to 95 % of each ratio by itself. Ellipses: 90 % of both ratios together");
        bands.setValue(Bands.BARS);
        bands.onCommit(chosen -> draw());
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
        row.add(pair("Bands", bands));
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
        followCatalogue();
    }

    /** Follows what was edited in the catalogue. */
    void followCatalogue() {
        if (!behind.isSelected()) {
            catalogue.clear();
        } else if (compared.isPresent()) {
            catalogue.follow(List.of(axes.across(), axes.up()));
        }
    }

    private void stopCatalogue() {
        behind.setSelected(false);
        catalogue.clear();
        behind.setToolTipText("Computing the catalogue was stopped; tick to begin again");
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
        followCatalogue();
    }

    private void draw() {
        Optional<Comparison> comparison = compared.flatMap(Compared::comparison);
        if (comparison.isEmpty()) {
            show(Optional.empty(), List.of());
            return;
        }
        Comparison table = comparison.get();
        Bands wanted = (Bands) bands.getSelectedItem();
        MapAxes asked = axes;
        Optional<Spread> known =
                spread.filter(each -> each.of() == table && each.axes().samePlaces(asked) && each.bands() == wanted);
        TradeOff usual = table.tradeOff();
        if (known.isPresent()) {
            show(Optional.of(known.get().tradeOff()), known.get().ellipses());
        } else {
            boolean ready =
                    usual.first().equals(asked.across()) && usual.second().equals(asked.up());
            show(ready ? Optional.of(usual) : Optional.empty(), List.of());
            if (!ready || wanted == Bands.ELLIPSES) {
                desk.compute(map, "Trade-off of the map", progress -> Spread.of(table, asked, wanted), this::deliver);
            }
        }
    }

    private void deliver(Outcome<Spread> outcome) {
        if (outcome instanceof Outcome.Current<Spread> current) {
            spread = Optional.of(current.value());
            if (compared.flatMap(Compared::comparison)
                            .filter(table -> table == current.value().of())
                            .isPresent()
                    && current.value().axes().samePlaces(axes)) {
                show(Optional.of(current.value().tradeOff()), current.value().ellipses());
            }
        }
    }

    private void show(Optional<TradeOff> tradeOff, List<Optional<RatioEllipse>> ellipses) {
        compared.ifPresent(shown -> map.show(MapPoint.of(shown, looks, axes, tradeOff, ellipses), axes));
        drawCloud();
    }

    private void drawCloud() {
        map.showCloud(behind.isSelected() ? catalogue.cloud() : Cloud.NONE, datum(axes.across()), datum(axes.up()));
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
}
