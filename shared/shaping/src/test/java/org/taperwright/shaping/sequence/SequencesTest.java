package org.taperwright.shaping.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;

class SequencesTest {
    private static InstrumentStep step(String id) {
        return new InstrumentStep(new ThingId(id), 20, Motion.FILING, Optional.empty(), Optional.empty(), 3, "");
    }

    private static final Sequence ABCD = new Sequence(
            "name",
            Optional.of(new ThingId("canal")),
            Optional.of(new ThingId("motor")),
            List.of(step("a"), step("b"), step("c"), step("d")),
            "note");

    private static String order(Sequence sequence) {
        StringBuilder order = new StringBuilder();
        sequence.steps().forEach(s -> order.append(s.uses().orElseThrow()));
        return order.toString();
    }

    @Test
    void aStepMovesTowardsTheEndOrTheStart() {
        assertThat(order(Sequences.moved(ABCD, 0, 2))).isEqualTo("bcad");
        assertThat(order(Sequences.moved(ABCD, 3, 1))).isEqualTo("adbc");
    }

    @Property
    void movingAStepBackRestoresTheSequence(@ForAll @IntRange(max = 3) int from, @ForAll @IntRange(max = 3) int to) {
        assertThat(Sequences.moved(Sequences.moved(ABCD, from, to), to, from)).isEqualTo(ABCD);
    }

    @Property
    void takingOutWhatWasPutInRestoresTheSequence(@ForAll @IntRange(max = 4) int place) {
        Sequence longer = Sequences.inserted(ABCD, place, step("x"));
        assertThat(longer.steps().get(place)).isEqualTo(step("x"));
        assertThat(Sequences.removed(longer, place)).isEqualTo(ABCD);
    }

    @Test
    void changingADepthLeavesAllElseAsItWas() {
        Sequence changed = Sequences.withDepth(ABCD, 1, 17.5);
        assertThat(changed.steps().get(1).depthMm(22)).isEqualTo(17.5);
        assertThat(Sequences.withDepth(changed, 1, 20)).isEqualTo(ABCD);
    }

    @Test
    void aPlaceOutsideTheSequenceIsRefused() {
        assertThatThrownBy(() -> Sequences.removed(ABCD, 4)).isInstanceOf(IndexOutOfBoundsException.class);
    }
}
