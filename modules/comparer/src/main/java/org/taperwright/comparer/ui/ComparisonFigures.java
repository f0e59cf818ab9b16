package org.taperwright.comparer.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import org.taperwright.library.store.KeptResults;
import org.taperwright.library.store.MeasuredOn;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.score.Weights;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.SeriesLook;

/** The figures beside the table: map, sections, profiles along the blade, bending curves. */
final class ComparisonFigures extends JPanel {
    private static final int WIDTH = 380;
    private static final int HEIGHT = 340;
    private static final int LEAST_WIDTH = 340;

    private final MapFigure map;
    private final SectionsFigure sections;
    private final ProfilesFigure profiles;
    private final CurvesFigure curves;
    private final JTabbedPane tabs;
    private final OverlayToggles overlays = new OverlayToggles(this::overlay);
    private transient Optional<Compared> shown = Optional.empty();
    private transient List<SeriesLook> looks = List.of();
    private transient List<MeasuredOn> measured = List.of();

    private final ScorePane score;
    private final WordsPane words;
    private final SweepPane sweep;
    private final TornadoPane tornado;

    /**
     * @param weigh receives the name of an edit and the weights after it
     * @param keep receives results to keep with the comparison
     * @param measure receives the name of an edit and the measurements after it; gives why it was not made
     */
    ComparisonFigures(
            Desk desk,
            BiConsumer<String, Weights> weigh,
            Consumer<KeptResults> keep,
            BiFunction<String, List<MeasuredOn>, List<Fault>> measure) {
        super(new BorderLayout());
        map = new MapFigure(desk);
        sections = new SectionsFigure(desk);
        profiles = new ProfilesFigure(desk);
        curves = new CurvesFigure(desk, measure);
        score = new ScorePane(desk, weigh);
        words = new WordsPane(keep);
        sweep = new SweepPane(desk);
        tornado = new TornadoPane(desk);
        tabs = new JTabbedPane(JTabbedPane.TOP, JTabbedPane.WRAP_TAB_LAYOUT);
        tabs.setName("comparison.figures");
        // the theme would move the row of the chosen tab next to the figure, and the tabs from under the pointer
        tabs.putClientProperty("FlatLaf.style", "rotateTabRuns: false");
        tabs.addTab("Map", null, map, "Two metrics against each other");
        tabs.addTab("Sections", null, sections, "Sections to one scale");
        tabs.addTab("Blade", null, profiles, "Diameter, stiffness and strength along the blade");
        tabs.addTab("Curves", null, curves, "Bending, twisting and turning in a curve, with measurements");
        tabs.addTab("Words", null, words, "What each design gives and takes, in sentences");
        tabs.addTab("Score", null, score, "One number by your own weights, with all it is made of");
        tabs.addTab("Sweep", null, sweep, "Metrics along one parameter of a design");
        tabs.addTab("What moves it", null, tornado, "Which parameter of a design moves a metric most");
        overlays.setVisible(false);
        tabs.addChangeListener(event -> overlays.setVisible(isOverlay(tabs.getSelectedComponent())));
        // beneath, so that the tabs stay where they are
        add(overlays, BorderLayout.SOUTH);
        add(tabs, BorderLayout.CENTER);
        setPreferredSize(new Dimension(WIDTH, HEIGHT));
        setMinimumSize(new Dimension(LEAST_WIDTH, HEIGHT / 2));
    }

    /** Shows a result; looks are in the order of its members. */
    void show(
            Compared compared, List<SeriesLook> newLooks, SavedComparison saved, List<Member> asSaved, boolean trial) {
        shown = Optional.of(compared);
        measured = saved.measured();
        looks = List.copyOf(newLooks);
        overlays.show(compared.members(), looks);
        map.show(compared, looks);
        overlay();
        words.show(compared, saved, trial);
        score.show(
                compared.comparison().filter(table -> compared.datumMember().isPresent()),
                compared.comparison().stream()
                        .flatMap(table -> table.columns().stream())
                        .map(column -> column.design().name())
                        .toList(),
                saved.weights());
        sweep.show(asSaved);
        tornado.show(asSaved);
    }

    /** Brings the quantity along the blade to the front that a metric comes from. */
    void showBehind(Metric metric) {
        profiles.showBehind(metric);
        tabs.setSelectedComponent(profiles);
    }

    private boolean isOverlay(Component figure) {
        return figure == sections || figure == profiles || figure == curves;
    }

    private void overlay() {
        shown.ifPresent(compared -> {
            List<SeriesLook> some = new ArrayList<>();
            for (int i = 0; i < compared.members().size(); i++) {
                if (!overlays.hides(compared.members().get(i))) {
                    some.add(looks.get(i));
                }
            }
            Compared only = compared.only(member -> !overlays.hides(member));
            sections.show(only, some);
            profiles.show(only, some);
            curves.show(only, some, measured);
        });
    }

    /** Follows what was edited in the catalogue behind the map. */
    void followCatalogue() {
        map.followCatalogue();
    }

    /** Shows where a design has been while a parameter was moved. */
    void showPath(List<Map<Metric, Double>> ratios, SeriesLook look) {
        map.showPath(ratios, look);
    }

    /** Marks what is shown as outdated, or as current again. */
    void setOutdated(boolean outdated) {
        String remark = outdated ? "outdated" : "";
        map.setRemark(remark);
        sections.setRemark(remark);
        profiles.setRemark(remark);
        curves.setRemark(remark);
    }
}
