package org.taperwright.library.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.taperwright.library.Examples;
import org.taperwright.library.exchange.LibraryBundle.Item;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.kit.Kit;

/** What the forms of instruments and kits say of a spoilt supply, picture or piece. */
class CatalogueRefusalsTest {
    private static final String INSTRUMENT = JsonForms.write(Examples.INSTRUMENT_ID, Examples.instrument());
    private static final String KIT = JsonForms.write(Examples.KIT_ID, Examples.kit());
    private static final String PICTURE = "expected a PNG or JPEG file of at most 64 KiB and 1024 × 1024 pixels";

    private static List<String> sentences(String text, String part, String by) {
        assertThat(text).contains(part);
        ReadResult result = JsonForms.read(text.replace(part, by), "f");
        return result instanceof ReadResult.Refused refused
                ? refused.faults().stream().map(each -> each.fault().sentence()).toList()
                : List.of();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"2028-02-29\" | \"2027-02-29\" | supply.expiry: found \"2027-02-29\"; expected a date, such as 2027-03-31, in double quotes",
                "\"2028-02-29\" | \"29.2.2028\" | supply.expiry: found \"29.2.2028\"; expected a date, such as 2027-03-31, in double quotes",
                "\"2028-02-29\" | 2028 | supply.expiry: found 2028; expected a date, such as 2027-03-31, in double quotes",
                "\"EUR\" | \"euro\" | supply.price.currency: found \"euro\"; expected a currency's code of three capital letters, in double quotes",
                "12.5, | -1, | supply.price.amount: found -1; expected a number, from 0 to 1000000000",
                "12.5, | 0.12345, | supply.price: has an amount of more than 4 decimals; expected values that go together",
                "\"stock\": 18 | \"stock\": 1.5 | supply.stock: found 1.5; expected a whole number from 0 to 1000000",
                "\"reorderLevel\" | \"reorder\" | supply.reorder: is no field here; expected one of supplier, lot, expiry, price, stock, reorderLevel",
            })
    void aSpoiltSupplyIsRefused(String part, String by, String sentence) {
        assertThat(sentences(INSTRUMENT, part, by)).containsExactly(sentence);
    }

    @Test
    void aSpoiltPictureIsRefused() {
        String picture = '"' + Examples.picture().base64() + '"';
        assertThat(sentences(INSTRUMENT, picture, "\"AAAA\""))
                .containsExactly("picture: is neither PNG nor JPEG; " + PICTURE);
        assertThat(sentences(INSTRUMENT, picture, "\"a picture\""))
                .containsExactly("picture: is no Base64; " + PICTURE);
        assertThat(sentences(INSTRUMENT, picture, "7"))
                .containsExactly("picture: found 7; expected a picture in Base64, in double quotes");
        assertThat(sentences(INSTRUMENT, picture, '"' + "A".repeat(90_000) + '"'))
                .containsExactly("picture: is a picture of 67500 bytes; " + PICTURE);
    }

    @Test
    void theFirstVersionKnowsNoSupply() {
        assertThat(sentences(INSTRUMENT, "\"version\": 2", "\"version\": 1"))
                .hasSize(3)
                .allSatisfy(sentence -> assertThat(sentence).contains("is no field here"));
        assertThat(sentences(INSTRUMENT, "\"version\": 2", "\"version\": 3"))
                .containsExactly("version: found 3, written by a newer program; expected at most 2");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"heron-2\" | \"heron-1\" | kit: has two pieces called \"heron-1\"; expected values that go together",
                "\"heron-2\" | \"heron 2\" | pieces[1].id: found \"heron 2\"; expected an identifier: letters, digits, dots and hyphens, at most 80, in double quotes",
                "\"low\": 0.02 | \"low\": 0.2 | pieces[0].log[0].lifeSpent: has a share of life that is not 0 <= low <= central <= high; expected values that go together",
                "\"canals\": 2 | \"canals\": -2 | pieces[0].log[0].canals: found -2; expected a whole number from 0 to 1000000",
                "\"unwound\", | \"unwond\", | pieces[0].damage[0]: found \"unwond\"; expected \"unwound\", \"overwound\", \"stretched flutes\", \"bent\", \"nicked edge\", \"blunt\", \"corroded\", \"cracked\", \"broken flute\" or \"broken off\" (perhaps \"unwound\")",
                "\"reason\" | \"why\" | pieces[0].discarded.why: is no field here; expected one of date, reason, replacementWanted",
            })
    void aSpoiltKitIsRefused(String part, String by, String sentence) {
        assertThat(sentences(KIT, part, by)).contains(sentence);
    }

    @Test
    void aKitRefersToInstrumentsSequencesAndItsMotor() {
        String alone = JsonForms.write(new LibraryBundle(
                List.of(new Item(Examples.KIT_ID, Examples.kit()), new Item(Examples.DESIGN_ID, Examples.design()))));
        assertThat(JsonForms.read(alone, "b"))
                .isInstanceOfSatisfying(
                        ReadResult.Read.class,
                        read -> assertThat(read.remarks())
                                .extracting(remark -> remark.fault().where())
                                .containsExactly(
                                        "motor",
                                        "pieces[0].instrument",
                                        "pieces[0].log[0].sequence",
                                        "pieces[1].instrument"));
        Kit wrong = new Kit("K", "", Optional.of(Examples.DESIGN_ID), List.of(), "");
        String bundle = JsonForms.write(new LibraryBundle(
                List.of(new Item(new ThingId("k"), wrong), new Item(Examples.DESIGN_ID, Examples.design()))));
        assertThat(JsonForms.read(bundle, "b"))
                .isInstanceOfSatisfying(
                        ReadResult.Refused.class,
                        refused -> assertThat(refused.faults())
                                .extracting(each -> each.fault().sentence())
                                .containsExactly("motor: refers to \"example-design\", which is a design;"
                                        + " expected a motor"));
    }
}
