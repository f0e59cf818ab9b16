package org.taperwright.mechanics.design;

import java.util.List;
import org.taperwright.mechanics.quantity.Shown;

/** Diameter at the tip, taper segments and shaft. */
final class DiameterChecks {
    /** Nothing thinner can be made or used, mm (common practice, no source). */
    static final double LEAST_MM = 0.05;
    /** The thickest blank: the shank of a latch instrument, mm (ISO 1797, from memory, high confidence). */
    static final double BLANK_MM = 2.35;

    private static final double STEEPEST = 0.5;
    private static final double STEEP = 0.12;
    private static final double CONTIGUOUS_MM = 1e-6;
    /** Taper runs up diameters by rounding; a shaft this much thinner is meant to be equal. */
    private static final double EQUAL_MM = 1e-6;

    private DiameterChecks() {}

    static void check(Design design, Findings findings) {
        tip(design.tipDiameterMm(), findings);
        if (design.taper().isEmpty()) {
            findings.impossible(
                    "taper", "there is no taper segment", "at least one, from the tip to the end of the working part");
        } else if (!findings.tooMany("taper", "taper segments", design.taper().size(), Stations.MOST)
                && contiguous(design.taper(), findings)) {
            diameters(design, findings);
        }
        shaft(design, findings);
    }

    private static void tip(double diameter, Findings findings) {
        if (!(diameter > LEAST_MM && diameter <= BLANK_MM)) {
            findings.impossible(
                    "tipDiameterMm",
                    "the diameter at the tip is " + Shown.diameter(diameter),
                    "above " + Shown.diameter(LEAST_MM) + " and at most " + Shown.diameter(BLANK_MM)
                            + ", the thickest blank");
        } else if (IsoSizes.ofTip(diameter)
                .filter(size -> Math.abs(size.d0Mm() - diameter) < 0.0005)
                .isEmpty()) {
            findings.unusual(
                    "tipDiameterMm",
                    Shown.diameter(diameter) + " at the tip is no size of the standard's series",
                    "sizes 06, 08, 10, 15 to 60 by 5, 70 to 140 by 10 (ISO 3630-1)");
        }
    }

    private static boolean contiguous(List<TaperSegment> taper, Findings findings) {
        double reached = 0;
        boolean sound = true;
        for (int i = 0; i < taper.size(); i++) {
            TaperSegment segment = taper.get(i);
            String where = "taper[" + i + "].";
            if (!(Math.abs(segment.fromMm() - reached) <= CONTIGUOUS_MM)) {
                findings.impossible(
                        where + "fromMm",
                        "the segment begins at " + Shown.mm(segment.fromMm()),
                        i == 0 ? "0 mm, the tip" : Shown.mm(reached) + ", where the segment before ends");
                sound = false;
            }
            if (!(segment.toMm() > segment.fromMm()) || !Double.isFinite(segment.toMm())) {
                findings.impossible(
                        where + "toMm",
                        "the segment ends at " + Shown.mm(segment.toMm()),
                        "beyond its beginning at " + Shown.mm(segment.fromMm()));
                sound = false;
            }
            sound &= findings.within(where + "taper", "the taper", segment.taper(), " mm/mm", -STEEPEST, STEEPEST);
            reached = segment.toMm();
        }
        return sound;
    }

    private static void diameters(Design design, Findings findings) {
        double diameter = design.tipDiameterMm();
        for (int i = 0; i < design.taper().size(); i++) {
            TaperSegment segment = design.taper().get(i);
            diameter += segment.taper() * (segment.toMm() - segment.fromMm());
            String where = "taper[" + i + "].taper";
            if (!Double.isFinite(diameter)) {
                return;
            }
            if (diameter <= LEAST_MM || diameter > BLANK_MM) {
                findings.impossible(
                        where,
                        "the diameter comes to " + Shown.diameter(diameter) + " at " + Shown.mm(segment.toMm()),
                        "above " + Shown.diameter(LEAST_MM) + " and at most " + Shown.diameter(BLANK_MM)
                                + ", the thickest blank");
                return;
            }
            if (segment.taper() < 0) {
                findings.unusual(
                        where,
                        "the taper is negative: the blade thins towards the handle",
                        "0 or more; a waist bends easily and breaks there (common practice, no source)");
            } else if (segment.taper() > STEEP) {
                findings.unusual(
                        where,
                        "the taper is " + Shown.taper(segment.taper()),
                        "0.02 to 0.12; a steeper one removes much dentine near the orifice (common practice, no source)");
            }
        }
    }

    private static void shaft(Design design, Findings findings) {
        if (design.shaftDiameterMm().isEmpty()) {
            return;
        }
        double shaft = design.shaftDiameterMm().getAsDouble();
        if (!(shaft > LEAST_MM && shaft <= BLANK_MM)) {
            findings.impossible(
                    "shaftDiameterMm",
                    "the shaft is " + Shown.diameter(shaft),
                    "above " + Shown.diameter(LEAST_MM) + " and at most " + Shown.diameter(BLANK_MM)
                            + ", the thickest blank");
        } else if (thickest(design) > shaft + EQUAL_MM) {
            findings.unusual(
                    "shaftDiameterMm",
                    "the taper brings the blade to " + Shown.diameter(thickest(design)) + ", thicker than the shaft of "
                            + Shown.diameter(shaft),
                    "a shaft at least as thick, since the blade is ground from it (common practice, no source)");
        }
    }

    /** Greatest diameter of the working part, mm. */
    static double thickest(Design design) {
        double diameter = design.tipDiameterMm();
        double result = diameter;
        for (TaperSegment segment : design.taper()) {
            diameter += segment.taper() * (segment.toMm() - segment.fromMm());
            result = Math.max(result, diameter);
        }
        return result;
    }
}
