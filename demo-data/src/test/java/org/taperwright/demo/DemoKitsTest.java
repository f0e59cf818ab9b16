package org.taperwright.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Duplicates;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.InstrumentChecks;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.kit.Coverage;
import org.taperwright.shaping.kit.Coverages;
import org.taperwright.shaping.kit.DiscardList;
import org.taperwright.shaping.kit.DiscardReason;
import org.taperwright.shaping.kit.DiscardReason.Weight;
import org.taperwright.shaping.kit.DiscardRule;
import org.taperwright.shaping.kit.DiscardRules;
import org.taperwright.shaping.kit.Kit;
import org.taperwright.shaping.kit.MotorChoice;
import org.taperwright.shaping.kit.MotorChoices;
import org.taperwright.shaping.kit.Reorder;
import org.taperwright.shaping.kit.Reorders;
import org.taperwright.shaping.sequence.Sequence;

class DemoKitsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 1, 1);
    private static final List<DiscardRule> RULES = DiscardRules.all(DiscardRules.USUAL_LIFE_SHARE);

    private final DemoThings things = DemoThings.read();
    private final Map<ThingId, Instrument> catalogue = things.byId(Instrument.class);
    private final Kit rotary = things.thing("bench-rotary", Kit.class);
    private final Kit hand = things.thing("bench-hand", Kit.class);

    private Map<String, List<DiscardReason>> discards(Kit kit) {
        DiscardList list = DiscardRules.list(kit, catalogue, RULES, DAY);
        assertThat(list.remarks()).isEmpty();
        return list.items().stream()
                .collect(Collectors.toMap(item -> item.piece().id(), DiscardList.Item::reasons));
    }

    @Test
    void everyRuleHasAPieceToDiscardAndOneIsOnlyConsidered() {
        Map<String, List<DiscardReason>> discards = discards(rotary);
        assertThat(discards).containsOnlyKeys("k15-1", "m20-1", "m25-1", "m30-1", "m35-1");
        assertThat(discards.values().stream().flatMap(List::stream).map(DiscardReason::rule))
                .containsAll(RULES.stream().map(DiscardRule::id).toList());
        assertThat(discards.get("m30-1"))
                .singleElement()
                .satisfies(reason -> assertThat(reason.weight()).isEqualTo(Weight.CONSIDER));
        assertThat(discards(hand)).containsOnlyKeys("k60-1");
    }

    @Test
    void theRotaryKitServesItsSequenceAndTheHandKitLacksOneSize() {
        Map<ThingId, Sequence> sequences = things.byId(Sequence.class);
        assertThat(missing(rotary, sequences).get("Rotary, moderate curve")).isEmpty();
        assertThat(missing(hand, sequences).get("Hand files, wide canal"))
                .containsExactly("K-type file 80, square, 80/.02, 25 mm");
    }

    private Map<String, List<String>> missing(Kit kit, Map<ThingId, Sequence> sequences) {
        return Coverages.of(kit, catalogue, sequences).stream()
                .collect(Collectors.toMap(Coverage::name, Coverage::missing));
    }

    @Test
    void thereIsSomethingToOrderFromBothSuppliersInTwoCurrencies() {
        List<Reorder> orders = Reorders.of(catalogue, List.of(rotary, hand));
        assertThat(orders).extracting(Reorder::supplier).containsExactly("Merrowby Depot", "Tarn & Fell Supplies");
        assertThat(orders).allSatisfy(order -> assertThat(order.sums()).hasSize(1));
        assertThat(orders.get(0).lines())
                .anySatisfy(line -> assertThat(line.replaces()).contains("m30-0"));
    }

    @Test
    void everyMotorDrivesTheRotaryKit() {
        List<MotorChoice> choices = MotorChoices.of(rotary, catalogue, things.byId(Motor.class));
        assertThat(choices).allSatisfy(choice -> assertThat(choice.missing()).isEmpty());
        assertThat(choices)
                .extracting(MotorChoice::motor)
                .contains(rotary.motor().orElseThrow());
    }

    @Test
    void noEntryIsADuplicateAndOnlyTheOneThatExpiredIsRemarked() {
        assertThat(Duplicates.in(catalogue).all()).isEmpty();
        assertThat(catalogue.values().stream()
                        .flatMap(entry -> InstrumentChecks.check(entry, DAY).stream())
                        .map(Fault::sentence))
                .containsExactly("supply.expiry: those in stock expired on 2025-01-31; take them out of stock");
    }
}
