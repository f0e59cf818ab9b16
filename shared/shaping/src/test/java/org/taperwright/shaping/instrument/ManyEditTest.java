package org.taperwright.shaping.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.Given;

class ManyEditTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);
    private static final ThingId HAND = new ThingId("hand");
    private static final ThingId ROTARY = new ThingId("rotary");

    private static ManyEdit.Outcome outcome(FieldChange... changes) {
        Map<ThingId, Instrument> entries = new LinkedHashMap<>();
        entries.put(HAND, Given.hand(25, 0.02));
        entries.put(ROTARY, Given.rotary(30, 0.06));
        return new ManyEdit(List.of(changes)).in(entries, TODAY);
    }

    private static List<String> sentences(List<Fault> faults) {
        return faults.stream().map(Fault::sentence).toList();
    }

    @Test
    void everyFieldIsSetInEveryEntry() {
        Price price = new Price(new BigDecimal("7.90"), "GBP");
        LocalDate expiry = LocalDate.of(2029, 1, 31);
        ManyEdit.Outcome outcome = outcome(
                new FieldChange.Maker("m"),
                new FieldChange.Line("l"),
                new FieldChange.Type("t"),
                new FieldChange.HeldBy(Drive.POWERED),
                new FieldChange.MovedBy(Motion.RECIPROCATION),
                new FieldChange.Length(31),
                new FieldChange.Assumed(true),
                new FieldChange.Speed(Optional.of(new Window(1, 2))),
                new FieldChange.Torque(Optional.of(new Window(3, 4))),
                new FieldChange.Angles(Optional.of(new Reciprocation(new Window(150, 150), new Window(30, 30)))),
                new FieldChange.UsesAllowed(5),
                new FieldChange.Supplier("s"),
                new FieldChange.Lot("7"),
                new FieldChange.Expiry(Optional.of(expiry)),
                new FieldChange.Cost(Optional.of(price)),
                new FieldChange.Stock(8),
                new FieldChange.ReorderLevel(9),
                new FieldChange.Note("n"));
        assertThat(outcome.faults()).isEmpty();
        assertThat(outcome.changed()).containsOnlyKeys(HAND, ROTARY);
        for (Instrument entry : outcome.changed().values()) {
            assertThat(entry.maker() + entry.line() + entry.type() + entry.note())
                    .isEqualTo("mltn");
            assertThat(entry.drive()).isEqualTo(Drive.POWERED);
            assertThat(entry.design().motion()).isEqualTo(Motion.RECIPROCATION);
            assertThat(entry.design().lengthMm()).isEqualTo(31);
            assertThat(entry.designAssumed()).isTrue();
            assertThat(entry.speedRpm()).contains(new Window(1, 2));
            assertThat(entry.torqueNmm()).contains(new Window(3, 4));
            assertThat(entry.reciprocation()).contains(new Reciprocation(new Window(150, 150), new Window(30, 30)));
            assertThat(entry.usesAllowed()).isEqualTo(5);
            assertThat(entry.supply()).isEqualTo(new Supply("s", "7", Optional.of(expiry), Optional.of(price), 8, 9));
        }
        assertThat(outcome.changed().get(HAND).size()).isEqualTo(25);
        assertThat(outcome.changed().get(ROTARY).size()).isEqualTo(30);
    }

    @Test
    void anEntryThatIsSoAlreadyIsNotChanged() {
        assertThat(outcome(new FieldChange.Maker("maker")).changed()).isEmpty();
    }

    @Test
    void anEntryThatBecomesImpossibleStaysAndTheOthersAreChanged() {
        ManyEdit.Outcome outcome = outcome(new FieldChange.Stock(-1));
        assertThat(outcome.changed()).isEmpty();
        assertThat(sentences(outcome.faults().get(HAND)))
                .containsExactly(
                        "stock: has a stock or reorder level below 0 or above 1000000; expected another value");

        assertThat(sentences(outcome(new FieldChange.Length(12)).faults().get(ROTARY)))
                .containsExactly("design.lengthMm: a length of 12 mm is less than the working part's 16 mm;"
                        + " expected at least the working part");
        assertThat(sentences(outcome(new FieldChange.UsesAllowed(-2)).faults().get(ROTARY)))
                .containsExactly("usesAllowed: found -2; expected 0 or more, 0 when not stated");
        assertThat(sentences(outcome(new FieldChange.Speed(Optional.of(new Window(9, 3))))
                        .faults()
                        .get(ROTARY)))
                .containsExactly("speedRpm: found 9 to 3; expected a range that rises from 0 or more");
    }

    @Test
    void whatIsOnlyUnusualIsChangedAndSaid() {
        ManyEdit.Outcome outcome = outcome(new FieldChange.Speed(Optional.of(new Window(300, 300))));
        assertThat(outcome.changed()).containsOnlyKeys(HAND, ROTARY);
        assertThat(outcome.faults()).containsOnlyKeys(HAND);
        assertThat(sentences(outcome.faults().get(HAND)))
                .containsExactly("drive: a hand instrument has a speed or torque window; leave both out, or powered");
        assertThat(sentences(outcome(new FieldChange.MovedBy(Motion.RECIPROCATION))
                        .faults()
                        .get(ROTARY)))
                .containsExactly("reciprocation: no angles are given; enter the angles that the maker states");
        assertThat(sentences(
                        outcome(new FieldChange.MovedBy(Motion.FILING)).faults().get(ROTARY)))
                .containsExactly("design.motion: a powered instrument is meant for filing; rotation or reciprocation");
        assertThat(sentences(outcome(new FieldChange.MovedBy(Motion.ROTATION))
                        .faults()
                        .get(HAND)))
                .containsExactly("design.motion: a hand instrument is meant for rotation; filing or reaming");
        assertThat(sentences(outcome(new FieldChange.Angles(
                                Optional.of(new Reciprocation(new Window(1, 2), new Window(1, 2)))))
                        .faults()
                        .get(ROTARY)))
                .containsExactly("reciprocation: angles are given, but the motion is rotation; leave the angles out");
    }

    @Test
    void stockThatExpiredIsSaid() {
        ManyEdit.Outcome outcome =
                outcome(new FieldChange.Stock(2), new FieldChange.Expiry(Optional.of(TODAY.minusDays(1))));
        assertThat(sentences(outcome.faults().get(ROTARY)))
                .containsExactly("supply.expiry: those in stock expired on 2026-04-30; take them out of stock");
        assertThat(outcome(new FieldChange.Stock(2), new FieldChange.Expiry(Optional.of(TODAY)))
                        .faults())
                .isEmpty();
    }

    @Test
    void theEditIsNamedByItsFields() {
        assertThat(new ManyEdit(List.of(new FieldChange.Supplier("a"), new FieldChange.Lot("b"))).name(12))
                .isEqualTo("Supplier, lot of 12 instruments");
        assertThat(new ManyEdit(List.of(new FieldChange.UsesAllowed(2))).name(1))
                .isEqualTo("Uses allowed of 1 instrument");
    }
}
