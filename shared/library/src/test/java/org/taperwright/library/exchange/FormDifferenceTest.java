package org.taperwright.library.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.taperwright.library.Examples;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Motor;

class FormDifferenceTest {
    private static SavedComparison comparing(String... designs) {
        List<ThingId> ids = new ArrayList<>();
        for (String design : designs) {
            ids.add(new ThingId(design));
        }
        return new SavedComparison("Compared", ids, ids.get(0), "");
    }

    @Test
    void aFieldChangedIsTold() {
        assertThat(FormDifference.between(Examples.plainDesign("Alpha"), Examples.plainDesign("Omega")))
                .containsExactly(new FieldChange("name", Optional.of("Alpha"), Optional.of("Omega")));
    }

    @Test
    void aGroupOfFieldsLeftOutIsToldFieldByField() {
        Motor motor = Examples.motor();
        Motor without = new Motor(
                motor.name(),
                motor.maker(),
                motor.speedRpm(),
                motor.torqueNmm(),
                Optional.empty(),
                motor.cordless(),
                motor.apexLocator(),
                motor.note());
        assertThat(FormDifference.between(motor, without))
                .hasSize(4)
                .allSatisfy(change -> assertThat(change.after()).isEmpty())
                .extracting(FieldChange::field)
                .allSatisfy(field -> assertThat(field).startsWith("reciprocation."));
        assertThat(FormDifference.between(without, motor).get(0).sentence()).contains("nothing \u2192 10");
    }

    @Test
    void anItemPutInBetweenDoesNotChangeThoseAfterIt() {
        assertThat(FormDifference.between(comparing("a", "b", "c"), comparing("a", "x", "b", "c")))
                .containsExactly(new FieldChange("designs[1]", Optional.empty(), Optional.of("x")));
        assertThat(FormDifference.between(comparing("a", "b", "c"), comparing("a", "c")))
                .containsExactly(new FieldChange("designs[1]", Optional.of("b"), Optional.empty()));
    }

    @Test
    void aLongStretchIsToldAsOneChange() {
        String[] many = IntStream.range(0, 60).mapToObj(i -> "d" + i).toArray(String[]::new);
        many[0] = "a";
        assertThat(FormDifference.between(comparing("a"), comparing(many)))
                .containsExactly(new FieldChange("designs", Optional.of("a list of 1"), Optional.of("a list of 60")));
    }

    @Test
    void textTooLongToBeReadIsToldByItsLength() {
        List<ThingId> designs = List.of(new ThingId("a"));
        SavedComparison before = new SavedComparison("Compared", designs, designs.get(0), "x".repeat(2500));
        SavedComparison after = new SavedComparison("Compared", designs, designs.get(0), "y".repeat(2500));
        assertThat(FormDifference.between(before, after))
                .containsExactly(
                        new FieldChange("note", Optional.of("2500 characters"), Optional.of("2500 characters")));
    }

    @Provide
    net.jqwik.api.Arbitrary<Record> things() {
        return ArbitraryThings.any();
    }

    @Property(tries = 200)
    void thingsOfOneKindDifferExactlyWhenTheyAreNotEqual(@ForAll("things") Record one, @ForAll("things") Record other) {
        if (one.getClass() == other.getClass()) {
            assertThat(FormDifference.between(one, other).isEmpty()).isEqualTo(one.equals(other));
        }
        assertThat(FormDifference.between(one, one)).isEmpty();
    }
}
