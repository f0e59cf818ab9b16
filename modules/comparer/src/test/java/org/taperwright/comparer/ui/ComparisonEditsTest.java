package org.taperwright.comparer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.mechanics.design.ThingId;

class ComparisonEditsTest {
    private static final ThingId A = new ThingId("a");
    private static final ThingId B = new ThingId("b");
    private static final ThingId C = new ThingId("c");
    private static final SavedComparison ABC = new SavedComparison("Three", List.of(A, B, C), B, "note");

    @Test
    void adding_leaves_out_what_is_compared_already_and_names_the_rest() {
        Optional<ComparisonEdits.Edit> edit =
                ComparisonEdits.add(ABC, List.of(member("a", "First"), member("d", "Fourth"), member("e", "Fifth")));

        assertThat(edit).hasValueSatisfying(made -> {
            assertThat(made.name()).isEqualTo("Compare Fourth and 1 more");
            assertThat(made.after().designs()).containsExactly(A, B, C, new ThingId("d"), new ThingId("e"));
            assertThat(made.after().datum()).isEqualTo(B);
            assertThat(made.after().note()).isEqualTo("note");
        });
    }

    @Test
    void no_more_than_six_designs_are_compared() {
        List<Member> many = IntStream.range(0, 9)
                .mapToObj(i -> member("x" + i, "Design " + i))
                .toList();

        SavedComparison full = ComparisonEdits.add(ABC, many).orElseThrow().after();

        assertThat(full.designs()).hasSize(6);
        assertThat(ComparisonEdits.add(full, List.of(member("y", "One more")))).isEmpty();
    }

    @Test
    void taking_the_datum_out_makes_the_first_that_remains_the_datum() {
        assertThat(ComparisonEdits.remove(ABC, B, "Second")).hasValueSatisfying(made -> {
            assertThat(made.name()).isEqualTo("Stop comparing Second");
            assertThat(made.after().designs()).containsExactly(A, C);
            assertThat(made.after().datum()).isEqualTo(A);
        });
    }

    @Test
    void two_designs_are_the_fewest() {
        SavedComparison two = new SavedComparison("Two", List.of(A, B), A, "");

        assertThat(ComparisonEdits.remove(two, A, "First")).isEmpty();
    }

    @Test
    void moving_stops_at_the_ends() {
        assertThat(ComparisonEdits.move(ABC, A, -1, "First")).isEmpty();
        assertThat(ComparisonEdits.move(ABC, A, 9, "First")).hasValueSatisfying(made -> {
            assertThat(made.name()).isEqualTo("Move First to the right");
            assertThat(made.after().designs()).containsExactly(B, C, A);
        });
    }

    @Test
    void what_would_change_nothing_is_no_edit() {
        assertThat(ComparisonEdits.datum(ABC, B, "Second")).isEmpty();
        assertThat(ComparisonEdits.rename(ABC, " Three ")).isEmpty();
        assertThat(ComparisonEdits.rename(ABC, "  ")).isEmpty();
        assertThat(ComparisonEdits.add(ABC, List.of(member("a", "First")))).isEmpty();
    }

    private static Member member(String id, String name) {
        return new Member(new ThingId(id), Optional.of(SampleDesigns.design(name, "square", "stainless-steel", 0.02)));
    }
}
