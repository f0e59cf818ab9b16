package org.taperwright.mechanics.design;

import java.util.Comparator;
import java.util.stream.IntStream;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.Sections;

/** Flute stations, and the helix angle that they make. */
final class FluteChecks {
    private static final double MOST_PER_MM = 20;
    /** Reamers stay below 45°, K-type files at 25 to 40°, H-type files at 60 to 65°. */
    private static final double STEEPEST_DEG = 70;

    private FluteChecks() {}

    static void check(Design design, Findings findings) {
        if (design.flutes().isEmpty()) {
            findings.impossible("flutes", "there is no flute station", "at least one, with its flutes per mm");
            return;
        }
        if (findings.tooMany("flutes", "flute stations", design.flutes().size(), Stations.MOST)) {
            return;
        }
        double before = Double.NEGATIVE_INFINITY;
        boolean sound = true;
        for (int i = 0; i < design.flutes().size(); i++) {
            FluteStation station = design.flutes().get(i);
            String where = "flutes[" + i + "].";
            sound &= Stations.level(where + "levelMm", station.levelMm(), before, design, findings);
            sound &= findings.within(
                    where + "flutesPerMm", "the number of flutes per mm", station.flutesPerMm(), "", 0, MOST_PER_MM);
            before = sound ? station.levelMm() : before;
        }
        if (sound) {
            twist(design, findings);
        }
    }

    private static void twist(Design design, Findings findings) {
        if (design.flutes().stream().allMatch(station -> station.flutesPerMm() == 0)) {
            findings.unusual(
                    "flutes[0].flutesPerMm",
                    "the flutes do not wind",
                    "a helix, which carries debris towards the handle and spreads the cut (common practice, no source)");
            return;
        }
        if (findings.noneImpossible()) {
            IntStream.range(0, design.flutes().size())
                    .boxed()
                    .max(Comparator.comparingDouble(i -> helixDeg(design, i)))
                    .filter(i -> helixDeg(design, i) > STEEPEST_DEG)
                    .ifPresent(i -> findings.unusual(
                            "flutes[" + i + "].flutesPerMm",
                            "the helix angle comes to " + Shown.degrees(helixDeg(design, i)) + " from the axis",
                            "at most " + Shown.degrees(STEEPEST_DEG)
                                    + ": reamers stay below 45°, K-type files at 25 to 40°, H-type at 60 to 65°"
                                    + " (teaching pages, read, medium confidence)"));
        }
    }

    /** Helix angle from the axis at a station, {@code atan(pi d turns per mm)}, degrees. */
    private static double helixDeg(Design design, int station) {
        FluteStation flutes = design.flutes().get(station);
        double level = Math.min(flutes.levelMm(), design.workingPartMm());
        double turnsPerMm = flutes.flutesPerMm() / Math.max(1, edges(design, level));
        return Math.toDegrees(Math.atan(Math.PI * design.diameterMm(level) * turnsPerMm));
    }

    /** Cutting edges of the section station at or below a level. */
    private static int edges(Design design, double level) {
        SectionStation found = design.sections().get(0);
        for (SectionStation station : design.sections()) {
            found = station.levelMm() <= level ? station : found;
        }
        return Sections.outline(found.shape()) instanceof OutlineResult.Drawn drawn
                ? Sections.edges(drawn.outline(), design.hand()).size()
                : 1;
    }
}
