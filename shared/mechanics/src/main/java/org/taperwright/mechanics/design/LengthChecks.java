package org.taperwright.mechanics.design;

import java.util.stream.Collectors;
import org.taperwright.mechanics.quantity.Shown;

/** Length from the tip to the handle, and of the working part. */
final class LengthChecks {
    private static final double LONGEST_MM = 60;
    /** The twisting test holds the last 3 mm and needs a length left to turn. */
    private static final double SHORTEST_MM = 5;

    private LengthChecks() {}

    static void check(Design design, Findings findings) {
        double length = design.lengthMm();
        if (!(length >= SHORTEST_MM && length <= LONGEST_MM)) {
            findings.impossible(
                    "lengthMm",
                    "the length is " + Shown.mm(length),
                    "at least " + Shown.mm(SHORTEST_MM) + " and at most " + Shown.mm(LONGEST_MM));
            return;
        }
        double working = design.workingPartMm();
        if (working > length) {
            findings.impossible(
                    "lengthMm",
                    "the working part of " + Shown.mm(working) + " is longer than the instrument of "
                            + Shown.mm(length),
                    "a length of at least " + Shown.mm(working) + ", or a shorter last taper segment");
        } else if (working > 0 && working < IsoSizes.WORKING_PART_MM) {
            findings.unusual(
                    "taper[" + (design.taper().size() - 1) + "].toMm",
                    "the working part is " + Shown.mm(working),
                    "at least " + Shown.mm(IsoSizes.WORKING_PART_MM) + " (ISO 3630-1)");
        }
        boolean standard =
                IsoSizes.lengthsMm().stream().anyMatch(each -> Math.abs(each - length) <= IsoSizes.LENGTH_TOLERANCE_MM);
        if (!standard) {
            String lengths = IsoSizes.lengthsMm().stream()
                    .map(each -> Shown.number(each))
                    .collect(Collectors.joining(", "));
            findings.unusual("lengthMm", "the length is " + Shown.mm(length), "one of " + lengths + " mm (ISO 3630-1)");
        }
    }
}
