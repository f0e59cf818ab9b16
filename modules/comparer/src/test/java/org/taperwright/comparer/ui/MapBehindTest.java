package org.taperwright.comparer.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Component;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.library.history.Change;
import org.taperwright.mechanics.comparison.ComparisonCell;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.workbench.ui.Shots;

/** The catalogue behind the map, and bands as ellipses. */
class MapBehindTest {
    private static final ThingId LIKE_NITI = new ThingId("catalogue-niti");
    private static final ThingId SAME_AGAIN = new ThingId("catalogue-same");
    private static final ThingId OTHER = new ThingId("catalogue-other");

    private OpenPanel open;

    @BeforeEach
    void open() throws InterruptedException {
        Map<ThingId, Record> things = SampleDesigns.library();
        Design niti = (Design) things.get(SampleDesigns.NITI);
        things.put(LIKE_NITI, instrument("Rotary", niti));
        things.put(
                SAME_AGAIN,
                instrument(
                        "Same again",
                        Designs.with(niti).name("Other name").note("Other note").design()));
        things.put(OTHER, instrument("Steel", (Design) things.get(SampleDesigns.EXTRA)));
        open = OpenPanel.of(things);
        open.desk().settle();
    }

    @AfterEach
    void close() {
        open.close();
    }

    @Test
    void every_instrument_stands_behind_the_map_without_asking_where_its_design_would() {
        ComparisonCell flexible = cell("flexibility");
        ComparisonCell cutting = cell("cutting");
        Point2D place = map().cloudPlace(LIKE_NITI).orElseThrow();
        assertThat(place.getX()).isCloseTo(flexible.ratio().orElseThrow(), within(1e-5));
        assertThat(place.getY()).isCloseTo(cutting.ratio().orElseThrow(), within(1e-5));
        assertThat(map().cloudPlace(SAME_AGAIN)).contains(place);
        assertThat(map().cloudWords()).isEqualTo("pale: 3 catalogue entries");
    }

    @Test
    void an_edited_instrument_moves_and_one_taken_out_leaves() throws InterruptedException {
        Point2D before = map().cloudPlace(OTHER).orElseThrow();
        Design thicker = SampleDesigns.design("Thicker", "triangle", "stainless-steel", 0.06);
        open.perform(() -> open.desk().edit("Thicker", List.of(new Change.Put(OTHER, instrument("Steel", thicker)))));
        assertThat(map().cloudPlace(OTHER).orElseThrow().getX()).isLessThan(0.8 * before.getX());

        open.perform(() -> open.desk().edit("Out", List.of(new Change.Remove(SAME_AGAIN))));
        assertThat(map().cloudWords()).isEqualTo("pale: 2 catalogue entries");
        open.perform(open.desk()::undo);
        open.perform(open.desk()::undo);
        assertThat(map().cloudPlace(OTHER)).contains(before);
        assertThat(map().cloudWords()).isEqualTo("pale: 3 catalogue entries");
    }

    @Test
    void another_axis_moves_the_cloud_with_it_and_the_box_takes_it_away() throws InterruptedException {
        JComboBox<?> across = open.find("comparison.map.across", JComboBox.class);
        open.perform(() -> across.setSelectedIndex(index(across, "torsional-stiffness")));
        assertThat(map().cloudPlace(LIKE_NITI).orElseThrow().getX())
                .isCloseTo(cell("torsional-stiffness").ratio().orElseThrow(), within(1e-5));

        open.perform(
                () -> open.find("comparison.map.cloud", AbstractButton.class).doClick());
        assertThat(map().cloudPlace(LIKE_NITI)).isEmpty();
    }

    @Test
    void bands_are_drawn_as_ellipses_where_they_are_wanted() throws InterruptedException {
        JComboBox<?> bands = open.find("comparison.map.bands", JComboBox.class);
        assertThat(map().points()).allMatch(point -> point.ellipse().isEmpty());
        open.perform(() -> bands.setSelectedIndex(1));
        assertThat(map().points()).hasSize(3);
        assertThat(map().points().get(0).ellipse()).as("the datum").isEmpty();
        assertThat(map().points().get(1).ellipse()).hasValueSatisfying(ellipse -> {
            TreeSet<Double> across = new TreeSet<>();
            ellipse.edge(72).forEach(point -> across.add(point.across()));
            assertThat(map().points().get(1).across().value()).isBetween(across.first(), across.last());
        });
        for (boolean dark : new boolean[] {false, true}) {
            Shots.theme(dark);
            Shots.take("map-ellipses-" + (dark ? "dark" : "light"), map(), 520, 440, 2);
        }
        open.perform(() -> bands.setSelectedIndex(0));
        assertThat(map().points()).allMatch(point -> point.ellipse().isEmpty());
    }

    private static int index(JComboBox<?> choice, String id) {
        for (int i = 0; i < choice.getItemCount(); i++) {
            if (((Metric) choice.getItemAt(i)).id().equals(id)) {
                return i;
            }
        }
        throw new AssertionError("no metric " + id);
    }

    private ComparisonCell cell(String metric) {
        return open.model().compared().orElseThrow().comparison().orElseThrow().rows().stream()
                .filter(row -> row.metric().id().equals(metric))
                .findFirst()
                .orElseThrow()
                .cells()
                .get(1);
    }

    private TradeOffMap map() {
        Component map = open.find("comparison.map", Component.class);
        return (TradeOffMap) map;
    }

    private static Instrument instrument(String name, Design design) {
        return new Instrument(
                name,
                "Marlowe",
                "",
                "rotary file",
                Drive.POWERED,
                design,
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty(),
                0,
                "");
    }
}
