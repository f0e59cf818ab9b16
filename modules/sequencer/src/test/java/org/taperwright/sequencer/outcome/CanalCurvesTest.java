package org.taperwright.sequencer.outcome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.taperwright.library.store.Arrangement;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.sequencer.SampleSequence;
import org.taperwright.shaping.passage.stroke.StepOutcome;
import org.taperwright.shaping.placement.ContactZone;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.workbench.ui.Plot;

/** The last step of the sample: a 25/.06 in a canal whose orifice, 0.8 by 0.6 mm, is 6 mm below the reference point. */
class CanalCurvesTest {
    private static final Shaped SHAPED = shaped();
    private static final StepOutcome STEP = SHAPED.step(2).orElseThrow();
    private static final CanalCurves CURVES =
            new CanalCurves(SampleSequence.canal(), STEP, SHAPED.stepBefore(2).map(StepOutcome::wall));

    private static Shaped shaped() {
        Map<ThingId, Entry> entries = new HashMap<>();
        SampleSequence.things().forEach((id, thing) -> entries.put(id, new Entry(id, thing, 1, Instant.EPOCH, "Open")));
        Snapshot snapshot = new Snapshot(1, entries);
        Arrangement arrangement = Arrangement.of(
                snapshot.thing(SampleSequence.SEQUENCE, Sequence.class).orElseThrow(), snapshot);
        return new ShapingWork(arrangement).run(Progress.NONE);
    }

    @Test
    void before_shaping_the_outline_is_the_canals_opening() {
        // half of 0.8 mm in the bend's plane, which is azimuth 0, and half of 0.6 mm across it
        assertThat(first(curve(CURVES.inPlane(), "before"))).isEqualTo(new Plot.Spot(6, -0.4));
        assertThat(first(curve(CURVES.acrossPlane(), "before")).y()).isEqualTo(-0.3, within(1e-12));
        assertThat(first(curve(CURVES.acrossPlane(), "after")).y()).isGreaterThan(0.3);
    }

    @Test
    void the_strain_is_greatest_where_the_last_stroke_bent_the_blade_most() {
        Plot.Spot most = CURVES.strain().curves().get(0).spots().stream()
                .max(Comparator.comparingDouble(Plot.Spot::y))
                .orElseThrow();
        int node = STEP.last().mostStrainedNode();
        assertThat(most.x()).isEqualTo(6 + STEP.last().depthMm(node), within(1e-9));
        assertThat(most.y()).isEqualTo(100 * STEP.last().strain(node), within(1e-9));
    }

    @Test
    void the_wall_stands_nowhere_within_an_instrument_that_cuts_and_was_worn_nowhere_by_less_than_nothing() {
        for (Plot.Curve curve : CURVES.gap().curves()) {
            assertThat(curve.spots())
                    .hasSizeGreaterThan(50)
                    .allSatisfy(spot -> assertThat(spot.y()).isGreaterThan(-5e-3));
        }
        for (Plot.Curve curve : CURVES.removed().curves()) {
            assertThat(curve.spots()).allSatisfy(spot -> assertThat(spot.y()).isGreaterThanOrEqualTo(0));
        }
        assertThat(curve(CURVES.removed(), "deepest").spots())
                .anySatisfy(spot -> assertThat(spot.y()).isGreaterThan(0.01));
    }

    @Test
    void each_stretch_of_contact_stands_on_its_side_with_its_force() {
        List<ContactZone> zones = CURVES.zones();
        assertThat(zones).isNotEmpty();
        for (ContactZone zone : zones) {
            double signed = zone.side() == ContactZone.Side.OUTER ? -zone.forceN() : zone.forceN();
            assertThat(CURVES.contact().curves().stream().flatMap(curve -> curve.spots().stream()))
                    .contains(new Plot.Spot(6 + zone.depthMm(), signed));
        }
    }

    @Test
    void the_first_step_has_nothing_before_it() {
        assertThat(SHAPED.stepBefore(0)).isEmpty();
        assertThat(SHAPED.stepBefore(2)).isEqualTo(SHAPED.step(1));
        Optional<StepOutcome> first = SHAPED.step(0);
        Plot removed = new CanalCurves(SampleSequence.canal(), first.orElseThrow(), Optional.empty()).removed();
        assertThat(curve(removed, "deepest").spots())
                .hasSameSizeAs(curve(CURVES.removed(), "deepest").spots());
    }

    private static Plot.Curve curve(Plot plot, String name) {
        return plot.curves().stream()
                .filter(curve -> curve.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Plot.Spot first(Plot.Curve curve) {
        return curve.spots().get(0);
    }
}
