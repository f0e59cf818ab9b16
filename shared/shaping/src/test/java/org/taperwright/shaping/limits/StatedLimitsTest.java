package org.taperwright.shaping.limits;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class StatedLimitsTest {
    @Test
    void thePagePackedWithTheEngineSaysWhatIsNeglectedAndHowLargeItIs() {
        List<LimitSection> sections = StatedLimits.sections();
        assertThat(sections).extracting(LimitSection::title).contains("What is neglected, and how large it is");
        assertThat(sections)
                .filteredOn(section -> section.title().startsWith("What is neglected"))
                .singleElement()
                .satisfies(section -> {
                    assertThat(section.table().get(0)).containsExactly("left out", "size");
                    assertThat(section.table())
                            .allSatisfy(line -> assertThat(line).hasSize(2));
                    assertThat(section.table())
                            .anySatisfy(line -> assertThat(line.get(0)).contains("hysteresis"));
                });
    }

    @Test
    void headingsParagraphsAndTablesAreToldApart() {
        List<LimitSection> sections = StatedLimits.sections("""
                # Title

                First line
                and `second`.

                ## Part

                | a | b |
                | --- | --- |
                | 1 | *two* |
                """);
        assertThat(sections)
                .containsExactly(
                        new LimitSection("Title", List.of("First line and second."), List.of()),
                        new LimitSection("Part", List.of(), List.of(List.of("a", "b"), List.of("1", "two"))));
    }
}
