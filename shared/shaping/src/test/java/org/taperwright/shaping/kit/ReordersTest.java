package org.taperwright.shaping.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.taperwright.shaping.kit.GivenKit.TODAY;
import static org.taperwright.shaping.kit.GivenKit.kit;
import static org.taperwright.shaping.kit.GivenKit.piece;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.Given;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Price;
import org.taperwright.shaping.instrument.Supply;

class ReordersTest {
    private static final ThingId A = new ThingId("a");
    private static final ThingId B = new ThingId("b");
    private static final ThingId C = new ThingId("c");

    private static Instrument entry(String name, String supplier, int stock, int level, String price) {
        Optional<Price> paid = price.isEmpty()
                ? Optional.empty()
                : Optional.of(new Price(new BigDecimal(price.split(" ")[0]), price.split(" ")[1]));
        return Given.hand(25, 0.02)
                .draft()
                .name(name)
                .supply(new Supply(supplier, "", Optional.empty(), paid, stock, level))
                .instrument();
    }

    private static Piece gone(String id, ThingId instrument, boolean wanted) {
        return piece(id, instrument)
                .draft()
                .discarded(Optional.of(new Discarding(TODAY, "bent", wanted)))
                .piece();
    }

    @Test
    void whatIsBelowItsLevelIsOrderedFromItsSupplierWithTheSum() {
        List<Reorder> orders = Reorders.of(
                Map.of(
                        A, entry("Beta", "Dyke Dental", 2, 6, "1.10 EUR"),
                        B, entry("alpha", "Dyke Dental", 0, 3, "2.05 EUR"),
                        C, entry("Gamma", "Dyke Dental", 5, 5, "9 EUR")),
                List.of());
        assertThat(orders).hasSize(1);
        Reorder order = orders.get(0);
        assertThat(order.supplier()).isEqualTo("Dyke Dental");
        assertThat(order.lines()).extracting(Reorder.Line::name).containsExactly("alpha", "Beta");
        assertThat(order.lines()).extracting(Reorder.Line::quantity).containsExactly(3, 4);
        assertThat(order.sums()).extracting(Reorder.Sum::text).containsExactly("10.55 EUR");
        assertThat(order.withoutPrice()).isZero();
        assertThat(order.lines().get(1).why()).isEqualTo("2 in stock, reorder level 6");
    }

    @Test
    void discardedPiecesAreReplacedFromStockAndTheRestIsOrdered() {
        Kit kit = kit(gone("p1", A, true), gone("p2", A, true), gone("p3", A, false), piece("p4", A));
        Reorder order = Reorders.of(Map.of(A, entry("Beta", "Dyke Dental", 3, 2, "")), List.of(kit))
                .get(0);
        assertThat(order.lines())
                .containsExactly(new Reorder.Line(A, "Beta", 1, 3, 2, List.of("p1", "p2"), Optional.empty()));
        assertThat(order.lines().get(0).why()).isEqualTo("replaces 2 discarded pieces; 3 in stock, reorder level 2");
        assertThat(order.sums()).isEmpty();
        assertThat(order.withoutPrice()).isEqualTo(1);
        assertThat(Reorders.of(Map.of(A, entry("Beta", "Dyke Dental", 4, 2, "")), List.of(kit)))
                .isEmpty();
    }

    @Test
    void suppliersAreInOrderThoseUnknownLastAndCurrenciesSummedApart() {
        List<Reorder> orders = Reorders.of(
                Map.of(
                        A, entry("A", "", 0, 1, "1 EUR"),
                        B, entry("B", "tern supplies", 0, 2, "3 GBP"),
                        C, entry("C", "Tern Supplies ", 0, 1, "5 EUR")),
                List.of());
        assertThat(orders).extracting(Reorder::supplier).containsExactly("tern supplies", "");
        assertThat(orders.get(0).sums()).extracting(Reorder.Sum::text).containsExactly("5.00 EUR", "6.00 GBP");
    }

    @Test
    void aLargeSumIsWritten() {
        Reorder order = Reorders.of(Map.of(A, entry("A", "S", 0, Supply.MOST, "1000000000 EUR")), List.of())
                .get(0);
        assertThat(order.sums().get(0).text()).isEqualTo("1000000000000000.00 EUR");
    }

    /** Once what is ordered has come and the replacements are taken, the stock is at its level or above. */
    @Property
    void whatIsOrderedIsEnoughAndNoMore(
            @ForAll @IntRange(max = 20) int stock,
            @ForAll @IntRange(max = 20) int level,
            @ForAll @IntRange(max = 5) int discarded) {
        Kit kit = new Kit(
                "K",
                "",
                Optional.empty(),
                java.util.stream.IntStream.range(0, discarded)
                        .mapToObj(i -> gone("p" + i, A, true))
                        .toList(),
                "");
        int ordered = Reorders.of(Map.of(A, entry("A", "S", stock, level, "")), List.of(kit)).stream()
                .mapToInt(order -> order.lines().get(0).quantity())
                .sum();
        int left = stock + ordered - discarded;
        assertThat(left).isGreaterThanOrEqualTo(level);
        assertThat(ordered == 0 || left == level).isTrue();
    }
}
