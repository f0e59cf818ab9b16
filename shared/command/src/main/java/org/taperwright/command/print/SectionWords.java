package org.taperwright.command.print;

import java.util.stream.Collectors;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.section.SectionFamily;
import org.taperwright.mechanics.section.Sections;

/** The names of a design's section families, from the tip on. */
final class SectionWords {
    private SectionWords() {}

    static String of(Design design) {
        return design.sections().stream()
                .map(station -> of(station.shape().family()))
                .distinct()
                .collect(Collectors.joining(" to "));
    }

    static String of(String family) {
        return Sections.family(family).map(SectionFamily::label).orElse(family);
    }
}
