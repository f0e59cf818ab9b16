package org.taperwright.library.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.taperwright.library.Examples;
import org.taperwright.library.store.InstrumentFilter;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Window;

class InstrumentMatchTest {
    private static final InstrumentFilter ALL = InstrumentFilter.ALL;
    private static final Snapshot LIBRARY = Examples.snapshotOf(Map.of(Examples.MOTOR_ID, Examples.motor()));
    /** Rotary, in stock. */
    private static final Instrument ROTARY = Examples.instrument();
    /** For reaming by hand, out of stock. */
    private static final Instrument PLAIN = ROTARY.draft()
            .design(Examples.plainDesign("Plain"))
            .supply(ROTARY.supply().withStock(0))
            .instrument();

    private static List<Instrument> through(InstrumentFilter filter) {
        return List.of(ROTARY, PLAIN).stream()
                .filter(new InstrumentMatch(filter, LIBRARY))
                .toList();
    }

    private static Optional<Window> from(double least, double most) {
        return Optional.of(new Window(least, most));
    }

    @Test
    void aFilterThatAsksNothingLetsAllThrough() {
        assertThat(through(ALL)).containsExactly(ROTARY, PLAIN);
        assertThat(through(ALL.withWords("nowhere")))
                .as("words are not its business")
                .hasSize(2);
    }

    @Test
    void eachPartOfAFilterNarrows() {
        assertThat(through(ALL.withSize(from(25, 25)))).hasSize(2);
        assertThat(through(ALL.withSize(from(26, 140)))).isEmpty();
        assertThat(through(ALL.withTaper(from(0.02, 0.02)))).containsExactly(PLAIN);
        assertThat(through(ALL.withLengthMm(from(26, 31)))).isEmpty();
        assertThat(through(ALL.withFamilies(List.of("triangular", "square")))).containsExactly(PLAIN);
        assertThat(through(ALL.withAlloys(List.of("niti-superelastic")))).containsExactly(ROTARY);
        assertThat(through(ALL.withMotions(List.of(Motion.REAMING)))).containsExactly(PLAIN);
        assertThat(through(ALL.withInStock(true))).containsExactly(ROTARY);
    }

    @Test
    void onlyWhatTheMotorDrivesIsLetThrough() {
        assertThat(through(ALL.withMotor(Optional.of(Examples.MOTOR_ID))))
                .as("reaming is done by hand")
                .containsExactly(ROTARY);
        assertThat(through(ALL.withMotor(Optional.of(new ThingId("gone"))))).isEmpty();
    }
}
