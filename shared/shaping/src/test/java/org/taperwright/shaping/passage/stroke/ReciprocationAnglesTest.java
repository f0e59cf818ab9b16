package org.taperwright.shaping.passage.stroke;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.taperwright.shaping.Given;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.instrument.Reciprocation;
import org.taperwright.shaping.instrument.Window;
import org.taperwright.shaping.sequence.ArrangedSequence.Working;
import org.taperwright.shaping.sequence.SetAngles;

class ReciprocationAnglesTest {
    private static final Reciprocation MADE_FOR = new Reciprocation(new Window(150, 190), new Window(20, 40));
    private static final Reciprocation RANGE = new Reciprocation(new Window(60, 170), new Window(50, 90));

    private static Instrument instrument(Optional<Reciprocation> angles) {
        return Given.rotary(25, 0.04).draft().reciprocation(angles).instrument();
    }

    private static Optional<Motor> motor() {
        return Optional.of(new Motor(
                "motor", "maker", new Window(100, 600), new Window(5, 40), Optional.of(RANGE), true, false, ""));
    }

    private static SetAngles of(Optional<SetAngles> set, Optional<Reciprocation> instrument, Optional<Motor> motor) {
        Instrument used = instrument(instrument);
        return ReciprocationAngles.of(new Working(0, Given.step(used, 22).withAngles(set), used), motor);
    }

    @Test
    void theAnglesSetInTheStepComeFirst() {
        SetAngles set = new SetAngles(100, 50);
        assertThat(of(Optional.of(set), Optional.of(MADE_FOR), motor())).isEqualTo(set);
    }

    /** Both allow 150 to 170 degrees of cutting; of releasing they have nothing in common, so the instrument's counts. */
    @Test
    void thenTheMiddleOfWhatInstrumentAndMotorBothAllow() {
        assertThat(of(Optional.empty(), Optional.of(MADE_FOR), motor())).isEqualTo(new SetAngles(160, 30));
    }

    @Test
    void thenTheMiddleOfWhatOneOfThemStates() {
        assertThat(of(Optional.empty(), Optional.of(MADE_FOR), Optional.empty()))
                .isEqualTo(new SetAngles(170, 30));
        assertThat(of(Optional.empty(), Optional.empty(), motor())).isEqualTo(new SetAngles(115, 70));
    }

    @Test
    void andTheUsualWhereNobodyStatesAny() {
        assertThat(of(Optional.empty(), Optional.empty(), Optional.empty())).isEqualTo(SetAngles.USUAL);
    }
}
