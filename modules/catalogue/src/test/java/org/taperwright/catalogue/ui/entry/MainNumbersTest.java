package org.taperwright.catalogue.ui.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.taperwright.catalogue.ui.SampleLibrary;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.instrument.Instrument;

class MainNumbersTest {
    private static final Pattern WITH_BAND =
            Pattern.compile("([\\d.,]+) (\\S+) \\(([\\d.,]+) to ([\\d.,]+)\\), estimate");

    @Test
    void a_design_assumed_by_type_has_the_same_values_in_bands_twice_as_wide_and_says_why() {
        Instrument known = SampleLibrary.hand(25);
        MainNumbers sure = MainNumbers.of(known, Progress.NONE);
        MainNumbers guess = MainNumbers.of(known.draft().designAssumed(true).instrument(), Progress.NONE);

        assertThat(sure.remark()).isEmpty();
        assertThat(guess.remark())
                .isEqualTo("The design is assumed by type: its bands are widened by a factor of 2 (common practice, no "
                        + "source).");
        Matcher one = matched(sure.values().get(0));
        Matcher two = matched(guess.values().get(0));
        assertThat(two.group(1)).isEqualTo(one.group(1));
        // a widening by ratio: low / 2 to 2 high, each shown to three digits
        assertThat(number(two.group(3)))
                .isCloseTo(number(one.group(3)) / 2, org.assertj.core.data.Percentage.withPercentage(1));
        assertThat(number(two.group(4)))
                .isCloseTo(number(one.group(4)) * 2, org.assertj.core.data.Percentage.withPercentage(1));
    }

    @Test
    void every_number_says_its_standing() {
        assertThat(MainNumbers.of(SampleLibrary.hand(25), Progress.NONE).values())
                .hasSameSizeAs(MainNumbers.METRICS)
                .allMatch(words ->
                        words.endsWith(", estimate") || words.endsWith(", computed") || words.endsWith(", index"));
    }

    private static Matcher matched(String words) {
        Matcher matcher = WITH_BAND.matcher(words);
        assertThat(matcher.matches()).as(words).isTrue();
        return matcher;
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace(",", ""));
    }
}
