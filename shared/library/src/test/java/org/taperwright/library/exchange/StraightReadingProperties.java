package org.taperwright.library.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.taperwright.library.exchange.json.JsonTokens;
import org.taperwright.library.exchange.json.Limits;
import org.taperwright.library.store.Content;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.kit.Kit;

/** Reading without a tree gives what reading with one gives, or nothing. */
class StraightReadingProperties {
    private static final ThingId ID = new ThingId("a-thing");

    @Provide
    Arbitrary<Record> things() {
        return ArbitraryThings.any();
    }

    @Provide
    Arbitrary<String> scraps() {
        return Arbitraries.oneOf(
                Arbitraries.strings().ofMaxLength(4),
                Arbitraries.of(
                        "{", "}", "[", "]", "\"", ",", ":", "null", "-0", "1e400", "NaN", "INF", "-", "\\u00", "0"));
    }

    @Property(tries = 1000)
    void whatIsWrittenIsReadWithoutATree(@ForAll("things") Record thing) {
        assertThat(straight(ThingKind.of(thing), JsonForms.write(ID, thing))).contains(thing);
    }

    @Property(tries = 3000)
    void ofASpoiltTextItGivesWhatTheTreeGivesOrNothing(
            @ForAll("things") Record thing,
            @ForAll @IntRange(max = 1_000_000) int at,
            @ForAll @IntRange(max = 12) int instead,
            @ForAll("scraps") String scrap) {
        String good = JsonForms.write(ID, thing);
        int from = at % good.length();
        String text = good.substring(0, from) + scrap + good.substring(Math.min(good.length(), from + instead));
        Optional<Record> straight = straight(ThingKind.of(thing), text);
        if (straight.isPresent()) {
            assertThat(JsonForms.read(text, "f", EnumSet.of(ThingKind.of(thing))))
                    .as(text)
                    .isInstanceOfSatisfying(
                            ReadResult.Read.class,
                            read -> assertThat(read.bundle().items().get(0).thing())
                                    .isEqualTo(straight.get()));
        }
    }

    @Example
    void aTextWithItsFieldsInAnotherOrderIsReadFromTheStoreAllTheSame() {
        String text = "{\"name\": \"Desk\", \"id\": \"a-thing\", \"version\": 1, \"form\": \"taperwright/kit\","
                + " \"pieces\": []}";
        assertThat(straight(ThingKind.KIT, text)).isEmpty();
        assertThat(JsonForms.forStore().read(ThingKind.KIT, text)).isInstanceOf(Content.Present.class);
    }

    @Example
    void whatIsNotOneWholeGoodThingIsReadWithATree() {
        String good = JsonForms.write(ID, new Kit("Desk", "", Optional.empty(), List.of(), ""));
        assertThat(straight(ThingKind.KIT, good)).isPresent();
        assertThat(straight(ThingKind.MOTOR, good)).as("another kind").isEmpty();
        assertThat(straight(ThingKind.KIT, good + "{}"))
                .as("more after the end")
                .isEmpty();
        assertThat(straight(ThingKind.KIT, good.replace("Desk\"", "Desk\", \"name\": \"Desk\"")))
                .as("a field twice")
                .isEmpty();
        assertThat(straight(ThingKind.KIT, good.replace("\"version\": 1", "\"version\": 9")))
                .as("a newer version")
                .isEmpty();
        assertThat(JsonTokens.read(good, new Limits(10, 32, 100, 100), ThingForm.of(ThingKind.KIT)::straight))
                .as("too long")
                .isEmpty();
        assertThat(JsonTokens.read(good, new Limits(1000, 32, 3, 100), ThingForm.of(ThingKind.KIT)::straight))
                .as("too many values")
                .isEmpty();
    }

    private static Optional<Record> straight(ThingKind kind, String text) {
        return JsonTokens.read(text, Limits.USUAL, ThingForm.of(kind)::straight).map(thing -> thing);
    }
}
