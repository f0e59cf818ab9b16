package org.taperwright.shaping.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.Given;
import org.taperwright.shaping.instrument.Likeness.Kind;

class DuplicatesTest {
    private static Instrument entry(String name, String maker, String lot) {
        return Given.rotary(25, 0.04)
                .draft()
                .name(name)
                .maker(maker)
                .supply(Supply.NONE.withLot(lot))
                .instrument();
    }

    private static Map<ThingId, Instrument> catalogue(Instrument... entries) {
        Map<ThingId, Instrument> catalogue = new LinkedHashMap<>();
        for (int i = 0; i < entries.length; i++) {
            catalogue.put(new ThingId("e" + i), entries[i]);
        }
        return catalogue;
    }

    private static List<String> found(Instrument... entries) {
        return Duplicates.in(catalogue(entries)).all().stream()
                .map(each -> each.entries() + " " + each.kind().words())
                .toList();
    }

    @Test
    void entriesOfOneDesignationMakerLineAndLotAreDuplicates() {
        assertThat(found(entry("A", "M", "1"), entry("B", "N", "2"), entry("A", "M", "1"), entry("A", "M", "1")))
                .containsExactly("[e0, e2, e3] the same in name, type, maker, line and lot");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Fen 25/.04 | fen  25/.04",
                "Fen 25/.04 | Fen 25/0.04",
                "Fen 25/.04 | Fen 25/,04",
                "Fen 25/.04 | Fen 25/04",
                "Fen 25/.04 | Fen 25 / 4 %",
                "Fen 25/.04 | FEN 25/.040",
                "K-type file 06 | K type file 6",
                "Löwe 25 | LOWE 25",
                "Ｆｅｎ 25 | Fen 25",
            })
    void aNameSpeltOtherwiseIsANearDuplicate(String one, String other) {
        assertThat(found(entry(one, "M", "1"), entry(other, "M", "1")))
                .containsExactly("[e0, e1] differ only in spelling");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"Fen 25/.04 | Fen 25/.06", "Fen 25/.04 | Fen 2/5.04", "Fen 1 | Fen 10", "Fen 25/.04 | Fens 25/.04"
            })
    void anotherNumberOrLetterIsAnotherName(String one, String other) {
        assertThat(found(entry(one, "M", "1"), entry(other, "M", "1"))).containsExactly("[e0, e1] differ only in name");
    }

    @Test
    void aDifferenceInOneFieldIsANearDuplicateAndInTwoIsNot() {
        assertThat(found(entry("A", "M", "1"), entry("A", "M", "2"))).containsExactly("[e0, e1] differ only in lot");
        assertThat(found(entry("A", "M", "1"), entry("A", "", "1"))).containsExactly("[e0, e1] differ only in maker");
        assertThat(found(entry("A", "M", "1"), entry("A", "N", "2"))).isEmpty();
        Instrument type = entry("A", "M", "1").draft().type("other").instrument();
        Instrument line = entry("A", "M", "1").draft().line("other").instrument();
        assertThat(found(entry("A", "M", "1"), type)).containsExactly("[e0, e1] differ only in type");
        assertThat(found(entry("A", "M", "1"), line)).containsExactly("[e0, e1] differ only in line");
    }

    @Test
    void anotherSizeTaperLengthOrDriveIsAnotherInstrument() {
        Instrument base = Given.rotary(25, 0.04);
        Instrument shorter = new FieldChange.Length(21).of(base);
        Instrument hand = base.draft().drive(Drive.HAND).instrument();
        assertThat(found(base, Given.rotary(30, 0.04), Given.rotary(25, 0.06), shorter, hand))
                .isEmpty();
    }

    @Test
    void anotherNameForAnotherAlloyIsNoSlip() {
        Instrument named = entry("B", "M", "1");
        Instrument other = named.draft()
                .design(Designs.with(named.design()).alloy("other").design())
                .instrument();
        assertThat(found(entry("A", "M", "1"), other)).isEmpty();
    }

    @Test
    void aNewEntryIsSetAgainstThoseKnown() {
        Duplicates known = Duplicates.in(catalogue(entry("A", "M", "1"), entry("a", "M", "1"), entry("A", "N", "1")));
        assertThat(known.of(entry("A", "M", "1")))
                .isEqualTo(Map.of(
                        Kind.SAME, List.of(new ThingId("e0")),
                        Kind.SPELLING, List.of(new ThingId("e1")),
                        Kind.MAKER, List.of(new ThingId("e2"))));
        assertThat(known.of(Given.rotary(30, 0.04))).isEmpty();
    }

    @Provide
    Arbitrary<Instrument> entries() {
        Arbitrary<String> word = Arbitraries.of("", "x", "X", "y");
        return Combinators.combine(word, word, word, word, Arbitraries.of(25, 30))
                .as((name, maker, line, lot, size) -> Given.rotary(size, 0.04)
                        .draft()
                        .name(name)
                        .maker(maker)
                        .line(line)
                        .supply(Supply.NONE.withLot(lot))
                        .instrument());
    }

    /** The groups hold the same pairs that a comparison of each with each finds, by another way of counting. */
    @Property(tries = 200)
    void theGroupsHoldThePairsThatComparingEachWithEachFinds(
            @ForAll @Size(max = 12) List<@From("entries") Instrument> entries) {
        Map<ThingId, Instrument> catalogue = catalogue(entries.toArray(Instrument[]::new));
        Set<List<ThingId>> pairs = new HashSet<>();
        catalogue.forEach((one, a) -> catalogue.forEach((other, b) -> {
            long differing = List.of(
                            a.name().equalsIgnoreCase(b.name()),
                            a.maker().equalsIgnoreCase(b.maker()),
                            a.line().equalsIgnoreCase(b.line()),
                            a.supply().lot().equalsIgnoreCase(b.supply().lot()))
                    .stream()
                    .filter(same -> !same)
                    .count();
            if (one.compareTo(other) < 0 && a.size() == b.size() && differing <= 1) {
                pairs.add(List.of(one, other));
            }
        }));
        Set<List<ThingId>> grouped = new HashSet<>();
        for (Likeness group : Duplicates.in(catalogue).all()) {
            for (ThingId one : group.entries()) {
                for (ThingId other : group.entries()) {
                    if (one.compareTo(other) < 0) {
                        grouped.add(List.of(one, other));
                    }
                }
            }
        }
        assertThat(grouped).isEqualTo(pairs);
    }
}
