package org.taperwright.library.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.taperwright.library.Examples;

/** Whatever a text holds, reading it ends in things or in faults that point into the text. */
class SpoiltTextProperties {
    private static final String GOOD = JsonForms.write(Examples.bundle());

    @Provide
    Arbitrary<String> scraps() {
        return Arbitraries.oneOf(
                Arbitraries.strings().ofMaxLength(8),
                Arbitraries.of(
                        "{", "}", "[", "]", "\"", ",", ":", "null", "1e400", "NaN", "-", "\\u", "\0", "//", "'"));
    }

    @Property(tries = 2000)
    void aScrapPutAnywhereIsReadOrRefusedInPlace(
            @ForAll @IntRange(max = 1_000_000) int at,
            @ForAll @IntRange(max = 20) int instead,
            @ForAll("scraps") String scrap) {
        int from = at % GOOD.length();
        int to = Math.min(GOOD.length(), from + instead);
        readsOrRefuses(GOOD.substring(0, from) + scrap + GOOD.substring(to));
    }

    @Property(tries = 500)
    void anyTextIsReadOrRefusedInPlace(@ForAll String text) {
        readsOrRefuses(text);
    }

    @Property(tries = 200)
    void anyBeginningOfAFormIsRefused(@ForAll @IntRange(max = 1_000_000) int length) {
        String text = GOOD.substring(0, length % (GOOD.length() - 2));
        assertThat(JsonForms.read(text, "f")).isInstanceOf(ReadResult.Refused.class);
    }

    private static void readsOrRefuses(String text) {
        ReadResult result = JsonForms.read(text, "f");
        if (result instanceof ReadResult.Refused refused) {
            List<String> lines = List.of(text.split("\n|\r\n?", -1));
            assertThat(refused.faults()).isNotEmpty().allSatisfy(each -> {
                assertThat(each.line()).isBetween(1, lines.size());
                assertThat(each.column())
                        .isBetween(1, lines.get(each.line() - 1).length() + 2);
                assertThat(each.sentence()).doesNotContain("Exception").doesNotContain("Source:");
            });
        }
    }
}
