package org.taperwright.shaping.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.taperwright.shaping.kit.GivenKit.GONE;
import static org.taperwright.shaping.kit.GivenKit.HAND;
import static org.taperwright.shaping.kit.GivenKit.ROTARY;
import static org.taperwright.shaping.kit.GivenKit.TODAY;
import static org.taperwright.shaping.kit.GivenKit.kit;
import static org.taperwright.shaping.kit.GivenKit.piece;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.Given;
import org.taperwright.shaping.instrument.FieldChange;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.kit.Coverage.Match;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Step;

class CoveragesTest {
    private static final ThingId SEQUENCE = new ThingId("sequence");
    private static final ThingId OTHER = new ThingId("other-30");

    private static Coverage coverage(Kit kit, Map<ThingId, Instrument> catalogue, Step... steps) {
        Sequence sequence = new Sequence("Steps", Optional.empty(), Optional.empty(), List.of(steps), "");
        return Coverages.of(kit, catalogue, Map.of(SEQUENCE, sequence)).get(0);
    }

    private static Step step(ThingId instrument, double depthMm) {
        return new InstrumentStep(instrument, depthMm, Motion.FILING, Optional.empty(), Optional.empty(), 1, "");
    }

    private static Map<ThingId, Instrument> with(ThingId id, Instrument instrument) {
        Map<ThingId, Instrument> catalogue = new HashMap<>(GivenKit.catalogue());
        catalogue.put(id, instrument);
        return catalogue;
    }

    @Test
    void aKitWithAPieceForEachStepCoversTheSequence() {
        Kit kit = kit(piece("a", HAND), piece("b", ROTARY), piece("c", ROTARY));
        Coverage coverage = coverage(kit, GivenKit.catalogue(), step(HAND, 20), step(ROTARY, 20), step(HAND, 20));
        assertThat(coverage.complete()).isTrue();
        assertThat(coverage.missing()).isEmpty();
        assertThat(coverage.steps())
                .containsExactly(
                        new Coverage.Step(1, "Ditch 25/.02, 25 mm", Match.SAME, List.of("a")),
                        new Coverage.Step(2, "Fen 30/.06, 25 mm", Match.SAME, List.of("b", "c")),
                        new Coverage.Step(3, "Ditch 25/.02, 25 mm", Match.SAME, List.of("a")));
    }

    @Test
    void whatIsDiscardedIsMissingAndNamedOnce() {
        Kit kit = Kits.discarded(kit(piece("a", HAND)), Set.of("a"), TODAY, "bent");
        Coverage coverage = coverage(kit, GivenKit.catalogue(), step(HAND, 20), step(HAND, 18));
        assertThat(coverage.complete()).isFalse();
        assertThat(coverage.missing()).containsExactly("Ditch 25/.02, 25 mm");
        assertThat(coverage.steps()).extracting(Coverage.Step::match).containsOnly(Match.MISSING);
    }

    @Test
    void anotherEntryOfTheSameSizeTaperAndDriveIsAlikeIfItIsLongEnough() {
        Instrument shorter = new FieldChange.Length(21).of(Given.rotary(30, 0.06));
        Kit kit = kit(piece("o", OTHER));
        Coverage reach = coverage(kit, with(OTHER, shorter), step(ROTARY, 20));
        assertThat(reach.complete()).isTrue();
        assertThat(reach.steps()).containsExactly(new Coverage.Step(1, "Fen 30/.06, 25 mm", Match.ALIKE, List.of("o")));
        assertThat(coverage(kit, with(OTHER, shorter), step(ROTARY, 22)).complete())
                .isFalse();
    }

    @Test
    void anotherSizeTaperDriveOrMotionIsNotAlike() {
        Instrument fen = GivenKit.catalogue().get(ROTARY);
        for (Instrument other : List.of(
                Given.rotary(35, 0.06),
                Given.rotary(30, 0.04),
                Given.hand(30, 0.06),
                new FieldChange.MovedBy(Motion.RECIPROCATION).of(fen))) {
            assertThat(coverage(kit(piece("o", OTHER)), with(OTHER, other), step(ROTARY, 20))
                            .complete())
                    .isFalse();
        }
    }

    @Test
    void aStepWhoseEntryIsGoneIsUnknownUnlessAPieceIsOfIt() {
        assertThat(coverage(kit(piece("a", HAND)), GivenKit.catalogue(), step(GONE, 20))
                        .steps())
                .containsExactly(new Coverage.Step(1, "gone", Match.UNKNOWN, List.of()));
        assertThat(coverage(kit(piece("g", GONE)), GivenKit.catalogue(), step(GONE, 20))
                        .steps())
                .containsExactly(new Coverage.Step(1, "gone", Match.SAME, List.of("g")));
    }

    @Test
    void sizesTapersAndLengthsInUseAreCounted() {
        Kit kit = Kits.discarded(
                kit(piece("a", HAND), piece("b", ROTARY), piece("c", ROTARY), piece("d", GONE), piece("e", HAND)),
                Set.of("e"),
                TODAY,
                "bent");
        Map<Coverages.Extent, Integer> extents = Coverages.extents(kit, GivenKit.catalogue());
        assertThat(extents.keySet())
                .extracting(Coverages.Extent::text)
                .containsExactly("25/.02, 25 mm", "30/.06, 25 mm");
        assertThat(extents.values()).containsExactly(1, 2);
    }
}
