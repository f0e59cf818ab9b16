package org.taperwright.mechanics.design;

import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.KnownAlloys;

/** The alloy, and whether making and motion suit it. */
final class MakingChecks {
    /** Bars that are drawn with these sections can be twisted into a blade; others must be ground. */
    private static final List<String> BARS = List.of("square", "triangle", "rhombus");

    private MakingChecks() {}

    static void check(Design design, KnownAlloys alloys, Findings findings) {
        Optional<Alloy> alloy = alloys.find(design.alloy());
        if (alloy.isEmpty()) {
            findings.impossible(
                    "alloy",
                    "no alloy is called \"" + design.alloy() + "\"",
                    "one of " + alloys.ids() + ", or an alloy of the library or the same file by its identifier");
        }
        alloy.ifPresent(known -> suits(design, known, findings));
        if (design.making() == Making.TWISTED) {
            twistedBar(design, findings);
        }
    }

    private static void suits(Design design, Alloy alloy, Findings findings) {
        if (design.making() == Making.TWISTED && alloy.superelastic()) {
            findings.unusual(
                    "making",
                    "a blank of " + alloy.label() + " is twisted",
                    "ground flutes: a superelastic blank springs back, unless it is first brought to its R-phase by heat"
                            + " (common practice, no source)");
        }
        if (design.motion() == Motion.ROTATION && !alloy.superelastic()) {
            findings.unusual(
                    "motion",
                    alloy.label() + " is turned continuously",
                    "a nickel-titanium alloy: steel soon tires when it turns in a curve (common practice, no source)");
        }
    }

    private static void twistedBar(Design design, Findings findings) {
        for (int i = 0; i < design.sections().size(); i++) {
            String family = design.sections().get(i).shape().family();
            if (!BARS.contains(family)) {
                findings.unusual(
                        "making",
                        "a blade with the section \"" + family + "\" at station " + i + " is twisted",
                        "a square, triangular or rhombic bar to twist; other sections are ground (common practice, no source)");
                return;
            }
        }
    }
}
