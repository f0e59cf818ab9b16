package org.taperwright.mechanics.design;

import org.taperwright.mechanics.quantity.Shown;

/** The tip's angle and kind. */
final class TipChecks {
    private static final double SHARPEST_DEG = 10;
    private static final double BLUNTEST_DEG = 170;
    /** From this size on a cutting tip is likelier to ledge or perforate than to help, mm. */
    private static final double LARGE_MM = 0.35;

    private TipChecks() {}

    static void check(Design design, Findings findings) {
        double angle = design.tip().angleDeg();
        if (!findings.within("tip.angleDeg", "the tip's angle", angle, "°", SHARPEST_DEG, BLUNTEST_DEG)) {
            return;
        }
        if (Math.abs(angle - IsoSizes.TIP_ANGLE_DEG) > IsoSizes.TIP_ANGLE_TOLERANCE_DEG) {
            findings.unusual(
                    "tip.angleDeg",
                    "the tip's angle is " + Shown.degrees(angle),
                    Shown.degrees(IsoSizes.TIP_ANGLE_DEG) + " give or take "
                            + Shown.degrees(IsoSizes.TIP_ANGLE_TOLERANCE_DEG) + " (ISO 3630-1)");
        }
        if (design.tip().kind() == TipKind.ACTIVE && design.tipDiameterMm() >= LARGE_MM) {
            findings.unusual(
                    "tip.kind",
                    "a tip of " + Shown.diameter(design.tipDiameterMm()) + " cuts ahead",
                    "a passive or semi-active tip on sizes from 35: a stiff blade with a cutting tip ledges or perforates in a"
                            + " curve (common practice, no source)");
        }
        double length = design.tip().lengthMm(design.tipDiameterMm());
        if (design.workingPartMm() > 0 && length > design.workingPartMm()) {
            findings.impossible(
                    "tip.angleDeg",
                    "a tip of " + Shown.degrees(angle) + " is " + Shown.mm(length) + " long",
                    "shorter than the working part of " + Shown.mm(design.workingPartMm()));
        }
    }
}
