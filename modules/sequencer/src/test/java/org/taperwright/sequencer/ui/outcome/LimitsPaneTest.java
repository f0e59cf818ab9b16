package org.taperwright.sequencer.ui.outcome;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.taperwright.shaping.limits.LimitSection;
import org.taperwright.shaping.limits.StatedLimits;
import org.taperwright.workbench.ui.CautionLine;

class LimitsPaneTest {
    @Test
    void the_page_has_the_caution_and_every_section_of_the_engines_limits() {
        List<LimitSection> sections = StatedLimits.sections();
        String html = LimitsPane.html(sections);
        assertThat(html).contains(CautionLine.SENTENCE);
        assertThat(sections).allSatisfy(section -> assertThat(html).contains("<h3>" + section.title() + "</h3>"));
    }

    @Test
    void signs_that_would_be_read_as_markup_are_written_out() {
        assertThat(LimitsPane.html(List.of(new LimitSection("a < b", List.of("c & d"), List.of(List.of("e > f"))))))
                .contains("a &lt; b", "c &amp; d", "e &gt; f");
    }
}
