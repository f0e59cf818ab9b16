package org.taperwright.shaping.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.taperwright.shaping.kit.GivenKit.HAND;
import static org.taperwright.shaping.kit.GivenKit.ROTARY;
import static org.taperwright.shaping.kit.GivenKit.TODAY;
import static org.taperwright.shaping.kit.GivenKit.kit;
import static org.taperwright.shaping.kit.GivenKit.piece;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.Given;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.NeedleGauge;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Irrigation;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Step;

/** Two steps of a rotary file, a rinse, and a hand file between them. */
class CarriedLivesTest {
    private static final LifeSpent EACH = new LifeSpent(0.05, 0.1, 0.2);
    private static final Map<Integer, LifeSpent> SPENT = Map.of(0, EACH, 3, EACH);

    private static ArrangedSequence sequence() {
        List<Step> steps =
                List.of(step(ROTARY), new Irrigation(NeedleGauge.G30, 18, 1, "saline", ""), step(HAND), step(ROTARY));
        Instrument rotary = GivenKit.catalogue().get(ROTARY);
        return new ArrangedSequence(
                new Sequence("s", Optional.empty(), Optional.empty(), steps, ""),
                Given.tube(0.3),
                Optional.empty(),
                List.of(
                        Optional.of(rotary),
                        Optional.empty(),
                        Optional.of(GivenKit.catalogue().get(HAND)),
                        Optional.of(rotary)));
    }

    private static Step step(ThingId id) {
        return new InstrumentStep(id, 20, Motion.ROTATION, Optional.empty(), Optional.empty(), 3, "");
    }

    private static Piece spent(String id, double low, double central, double high) {
        return piece(id, ROTARY)
                .draft()
                .log(List.of(GivenKit.use(TODAY, 1, new LifeSpent(low, central, high))))
                .piece();
    }

    private static CarriedLife of(Kit kit, Map<ThingId, String> chosen) {
        return CarriedLives.of(kit, sequence(), GivenKit.catalogue(), chosen, SPENT, 0.5);
    }

    @Test
    void thePieceOfWhichLeastIsSpentMakesAllStepsOfItsEntry() {
        Kit kit = kit(spent("worn", 0.2, 0.4, 0.9), spent("fresh", 0.01, 0.02, 0.05), piece("h", HAND));
        CarriedLife life = of(kit, Map.of());
        assertThat(life.without()).isEmpty();
        assertThat(life.pieces()).extracting(carried -> carried.piece().id()).containsExactly("fresh", "h");
        CarriedPiece fresh = life.pieces().get(0);
        assertThat(fresh.places()).containsExactly(0, 3);
        assertThat(fresh.after().low()).isEqualTo(0.11, within(1e-12));
        assertThat(fresh.after().central()).isEqualTo(0.22, within(1e-12));
        assertThat(fresh.after().high()).isEqualTo(0.45, within(1e-12));
        assertThat(fresh.passesIn()).isEmpty();
        assertThat(fresh.mayPass()).isFalse();
    }

    /** Spent 0.02 of 0.5 and 0.2 a canal: two more canals end at 0.42, the third at 0.62. */
    @Test
    void itSaysHowManySuchCanalsAreLeft() {
        CarriedPiece fresh =
                of(kit(spent("fresh", 0.01, 0.02, 0.05)), Map.of()).pieces().get(0);
        assertThat(fresh.canalsLeft(false)).contains(2);
        assertThat(fresh.canalsLeft(true)).contains(1);
    }

    @Test
    void aChosenPieceIsTakenAndSaysInWhichStepItComesToItsLimit() {
        Kit kit = kit(spent("worn", 0.2, 0.35, 0.45), spent("fresh", 0.01, 0.02, 0.05));
        CarriedPiece worn = of(kit, Map.of(ROTARY, "worn")).pieces().get(0);
        assertThat(worn.piece().id()).isEqualTo("worn");
        assertThat(worn.passesIn()).contains(3);
        CarriedPiece near =
                of(kit(spent("near", 0.1, 0.2, 0.25)), Map.of()).pieces().get(0);
        assertThat(near.passesIn()).isEmpty();
        assertThat(near.mayPass()).isTrue();
    }

    @Test
    void aStepForWhichTheKitHasNoPieceInUseIsNamed() {
        assertThat(of(kit(piece("a", ROTARY)), Map.of()).without()).containsExactly(2);
    }

    @Test
    void loggingTheUseCarriesWhatWasSpentToTheNextCase() {
        Kit kit = kit(spent("a", 0.01, 0.02, 0.05), piece("h", HAND));
        Kit after = of(kit, Map.of()).logged(kit, TODAY, 2, Optional.empty());
        Piece used = after.piece("a").orElseThrow();
        assertThat(used.uses()).isEqualTo(2);
        assertThat(used.lifeSpent().orElseThrow().central()).isEqualTo(0.42, within(1e-12));
        CarriedPiece next = of(after, Map.of()).pieces().get(0);
        assertThat(next.before().central()).isEqualTo(0.42, within(1e-12));
        assertThat(next.passesIn()).contains(0);
        assertThat(after.piece("h").orElseThrow().uses()).isEqualTo(1);
    }
}
