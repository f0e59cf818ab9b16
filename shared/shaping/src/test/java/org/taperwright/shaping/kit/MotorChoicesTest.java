package org.taperwright.shaping.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.taperwright.shaping.kit.GivenKit.HAND;
import static org.taperwright.shaping.kit.GivenKit.ROTARY;
import static org.taperwright.shaping.kit.GivenKit.TODAY;
import static org.taperwright.shaping.kit.GivenKit.kit;
import static org.taperwright.shaping.kit.GivenKit.piece;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.Given;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.instrument.Window;

class MotorChoicesTest {
    private static final ThingId SLOW = new ThingId("slow");
    private static final ThingId FIT = new ThingId("fit");
    private static final Motor SLOW_MOTOR =
            new Motor("Alder", "", new Window(50, 150), new Window(5, 40), Optional.empty(), false, false, "");

    @Test
    void theMotorThatDrivesTheMostComesFirstAndTheOthersSayWhatIsMissing() {
        Kit kit = kit(piece("a", HAND), piece("b", ROTARY), piece("c", ROTARY));
        List<MotorChoice> choices =
                MotorChoices.of(kit, GivenKit.catalogue(), Map.of(SLOW, SLOW_MOTOR, FIT, Given.motor()));
        assertThat(choices).extracting(MotorChoice::motor).containsExactly(FIT, SLOW);
        assertThat(choices.get(0).missing()).isEmpty();
        assertThat(choices.get(0).fits()).containsOnlyKeys(ROTARY);
        assertThat(choices.get(1).missing()).containsExactly(ROTARY);
        assertThat(choices.get(1).fits().get(ROTARY).reasons())
                .extracting(Fault::what)
                .containsExactly("needs a speed of 250 rpm to 350 rpm, but Alder can run at 50 rpm to 150 rpm only");
    }

    @Test
    void discardedPiecesNeedNoMotor() {
        Kit kit = Kits.discarded(kit(piece("b", ROTARY)), Set.of("b"), TODAY, "bent");
        MotorChoice choice = MotorChoices.of(kit, GivenKit.catalogue(), Map.of(SLOW, SLOW_MOTOR))
                .get(0);
        assertThat(choice.fits()).isEmpty();
        assertThat(choice.missing()).isEmpty();
    }
}
