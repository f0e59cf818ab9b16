package org.taperwright.designer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.design.TaperSegment;

class TapersTest {
    private final List<TaperSegment> taper = SampleDesigns.rotary().taper();

    @Test
    void moving_an_end_moves_the_next_segments_beginning_and_no_taper() {
        List<TaperSegment> moved = Tapers.withEnd(taper, 0, 5, 40);

        assertThat(moved)
                .containsExactly(
                        new TaperSegment(0, 5, 0.08), new TaperSegment(5, 8, 0.05), new TaperSegment(8, 16, 0.03));
    }

    @Test
    void an_end_stops_before_it_leaves_a_neighbour_without_length() {
        assertThat(Tapers.withEnd(taper, 0, 12, 40).get(0).toMm()).isEqualTo(8 - Tapers.SHORTEST);
        assertThat(Tapers.withEnd(taper, 1, 0, 40).get(1).toMm()).isEqualTo(3 + Tapers.SHORTEST);
    }

    @Test
    void the_last_end_moves_the_working_part() {
        assertThat(Tapers.withEnd(taper, 2, 18, 40).get(2).toMm()).isEqualTo(18);
        assertThat(Tapers.withEnd(taper, 2, 90, 40).get(2).toMm()).isEqualTo(40);
    }

    @Test
    void splitting_and_taking_one_half_out_again_gives_the_same_segments() {
        assertThat(Tapers.without(Tapers.split(taper, 1), 2)).isEqualTo(taper);
        assertThat(Tapers.without(Tapers.split(taper, 0), 0)).isEqualTo(taper);
    }

    @Test
    void segments_stay_contiguous_whatever_is_done() {
        List<TaperSegment> changed =
                Tapers.extended(Tapers.without(Tapers.split(Tapers.withEnd(taper, 1, 9.25, 40), 2), 0), 2);

        for (int i = 1; i < changed.size(); i++) {
            assertThat(changed.get(i).fromMm()).isEqualTo(changed.get(i - 1).toMm());
        }
        assertThat(changed.get(0).fromMm()).isZero();
    }
}
