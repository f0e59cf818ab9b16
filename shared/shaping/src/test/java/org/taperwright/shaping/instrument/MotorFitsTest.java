package org.taperwright.shaping.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.Given;

class MotorFitsTest {
    private static final Reciprocation ANGLES = new Reciprocation(new Window(150, 170), new Window(30, 50));

    /** 100 to 600 rev/min, 5 to 40 N mm. */
    private static Motor motor(Optional<Reciprocation> angles) {
        Motor plain = Given.motor();
        return new Motor("Alder", "", plain.speedRpm(), plain.torqueNmm(), angles, true, false, "");
    }

    private static Instrument reciprocating(Optional<Reciprocation> angles) {
        return new FieldChange.Angles(angles)
                .of(new FieldChange.MovedBy(Motion.RECIPROCATION).of(Given.rotary(25, 0.06)));
    }

    private static List<String> reasons(Motor motor, Instrument instrument) {
        return MotorFits.of(motor, instrument).reasons().stream()
                .map(Fault::sentence)
                .toList();
    }

    @Test
    void aMotorDrivesWhatItsRangeReachesAndSaysWhatBothAllow() {
        MotorFit fit = MotorFits.of(motor(Optional.empty()), Given.rotary(25, 0.06));
        assertThat(fit.drives()).isTrue();
        assertThat(fit.reasons()).isEmpty();
        assertThat(fit.speedRpm()).contains(new Window(250, 350));
        assertThat(fit.torqueNmm()).contains(new Window(10, 25));
        assertThat(fit.reciprocation()).isEmpty();
    }

    @Test
    void onlyWhatBothAllowIsSet() {
        Instrument wide = new FieldChange.Speed(Optional.of(new Window(500, 900))).of(Given.rotary(25, 0.06));
        assertThat(MotorFits.of(motor(Optional.empty()), wide).speedRpm()).contains(new Window(500, 600));
    }

    @Test
    void eachThingThatIsOutOfReachIsAReason() {
        Instrument fast = new FieldChange.Torque(Optional.of(new Window(60, 60)))
                .of(new FieldChange.Speed(Optional.of(new Window(800, 1000))).of(Given.rotary(25, 0.06)));
        assertThat(reasons(motor(Optional.empty()), fast))
                .containsExactly(
                        "speedRpm: needs a speed of 800 rpm to 1000 rpm, but Alder can run at 100 rpm to 600 rpm only;"
                                + " take another motor",
                        "torqueNmm: needs a torque limit of 6 N·cm, but Alder can limit the torque to 0.5 N·cm to 4"
                                + " N·cm only; take another motor");
        assertThat(MotorFits.of(motor(Optional.empty()), fast).drives()).isFalse();
    }

    @Test
    void aHandInstrumentNeedsNoMotor() {
        assertThat(reasons(motor(Optional.empty()), Given.hand(25, 0.02)))
                .containsExactly("drive: is a hand instrument; take one with a latch");
    }

    @Test
    void aMotionThatNoMotorMakesIsAReason() {
        Instrument filing = new FieldChange.MovedBy(Motion.FILING).of(Given.rotary(25, 0.06));
        assertThat(reasons(motor(Optional.empty()), filing))
                .containsExactly("design.motion: is meant for filing, which Alder does not do;"
                        + " take an instrument for rotation or reciprocation");
    }

    @Test
    void reciprocationNeedsAMotorThatReciprocatesByItsAngles() {
        assertThat(reasons(motor(Optional.empty()), reciprocating(Optional.of(ANGLES))))
                .containsExactly("reciprocation: reciprocates, which Alder does not; take a motor that reciprocates");
        Reciprocation small = new Reciprocation(new Window(10, 90), new Window(60, 60));
        assertThat(reasons(motor(Optional.of(small)), reciprocating(Optional.of(ANGLES))))
                .containsExactly(
                        "reciprocation.cuttingDeg: needs a cutting angle of 150° to 170°, but Alder can turn by 10° to"
                                + " 90° only; take another motor",
                        "reciprocation.releasingDeg: needs a releasing angle of 30° to 50°, but Alder can turn back by"
                                + " 60° only; take another motor");
        Reciprocation large = new Reciprocation(new Window(10, 160), new Window(40, 370));
        assertThat(MotorFits.of(motor(Optional.of(large)), reciprocating(Optional.of(ANGLES))))
                .isEqualTo(new MotorFit(
                        List.of(),
                        Optional.of(new Window(250, 350)),
                        Optional.of(new Window(10, 25)),
                        Optional.of(new Reciprocation(new Window(150, 160), new Window(40, 50)))));
    }

    @Test
    void whatTheMakerDoesNotStateIsSaidAndKeepsNoMotorOut() {
        Instrument silent = reciprocating(Optional.empty())
                .draft()
                .speedRpm(Optional.empty())
                .torqueNmm(Optional.empty())
                .instrument();
        MotorFit fit = MotorFits.of(motor(Optional.of(ANGLES)), silent);
        assertThat(fit.drives()).isTrue();
        assertThat(fit.reasons().stream().map(Fault::sentence))
                .containsExactly(
                        "speedRpm: states no speed; enter what its maker allows before setting the motor",
                        "torqueNmm: states no torque limit; enter what its maker allows before setting the motor",
                        "reciprocation.cuttingDeg: states no cutting angle;"
                                + " enter what its maker allows before setting the motor",
                        "reciprocation.releasingDeg: states no releasing angle;"
                                + " enter what its maker allows before setting the motor");
    }

    @Test
    void manyInstrumentsAreSetAgainstOneMotor() {
        Map<ThingId, MotorFit> fits = MotorFits.of(
                motor(Optional.empty()),
                Map.of(new ThingId("a"), Given.rotary(25, 0.06), new ThingId("b"), Given.hand(25, 0.02)));
        assertThat(fits.get(new ThingId("a")).drives()).isTrue();
        assertThat(fits.get(new ThingId("b")).drives()).isFalse();
    }

    /** A motor drives exactly when some setting lies in both ranges; sought here by trying settings. */
    @Property(tries = 200)
    void aMotorDrivesWhenSomeSpeedLiesInBothRanges(
            @ForAll @DoubleRange(min = 1, max = 1000) double one,
            @ForAll @DoubleRange(min = 1, max = 1000) double other) {
        Window needed = new Window(Math.rint(Math.min(one, other)), Math.rint(Math.max(one, other)));
        Instrument instrument = new FieldChange.Speed(Optional.of(needed)).of(Given.rotary(25, 0.06));
        Motor motor = motor(Optional.empty());
        boolean some = false;
        for (int rpm = 1; rpm <= 1000; rpm++) {
            some |= needed.holds(rpm) && motor.speedRpm().holds(rpm);
        }
        assertThat(MotorFits.of(motor, instrument).drives()).isEqualTo(some);
    }
}
