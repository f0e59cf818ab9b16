package org.taperwright.mechanics.fatigue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.uncertainty.LatinHypercube;
import org.taperwright.mechanics.uncertainty.Sampled;
import org.taperwright.mechanics.uncertainty.Spread;

/**
 * Turning in a plain tube until fracture. The outer fibre's strain amplitude is {@code eps = d / (2 R)} (definition of
 * Cheung and Darvell, Int Endod J 2007), greatest at the thickest level in the curve's middle; the alloy's law gives the
 * cycles. Sections differ only by their diameter here, and torque is not in it.
 */
public final class Fatigue {
    /** Usual speed of rotation, rpm: common practice, no source. */
    public static final double USUAL_RPM = 300;

    /**
     * Lives in reciprocation over those in rotation: 241 to 422 % more, Martins and others, Materials 2026;19:387 (read),
     * of nickel-titanium.
     */
    static final Spread RECIPROCATION = Spread.byRatio(3.413, 5.224);

    /** Standard deviation between like instruments, as a share: Huelsmann and others, Int Endod J 2019;52:1427 (read). */
    private static final double SCATTER = 0.30;

    private static final NormalDistribution NORMAL = new NormalDistribution();
    private static final int MOTION = StrainLife.CONSTANTS;
    private static final int PIECE = StrainLife.CONSTANTS + 1;

    private Fatigue() {}

    /** A design turning in a tube; filing and reaming are reckoned as if it turned on. */
    public static FatigueResult in(Tube tube, Design design, Alloy alloy, double speedRpm) {
        double level = worstLevel(tube, design);
        double strain = strain(tube, design, level);
        StrainLife law = StrainLives.of(alloy);
        boolean otherMotion = design.motion() != Motion.ROTATION
                && !(design.motion() == Motion.RECIPROCATION && alloy.superelastic());
        Sampled cycles = cycles(tube, design, alloy);
        return new FatigueResult(
                tube,
                strain,
                level,
                cycles.value(),
                cycles.band().orElseThrow(),
                speedRpm,
                otherMotion || law.extrapolates(strain),
                law.source());
    }

    /** Cycles to fracture with what the constants of the law and the scatter between like pieces make of them. */
    public static Sampled cycles(Tube tube, Design design, Alloy alloy) {
        double strain = strain(tube, design, worstLevel(tube, design));
        StrainLife law = StrainLives.of(alloy);
        Spread motion = design.motion() == Motion.RECIPROCATION ? RECIPROCATION : Spread.exactly(1);
        double spreadOfLog = Math.sqrt(Math.log1p(SCATTER * SCATTER));
        double middle = Math.min(StrainLife.RUN_OUT, law.cycles(strain) * motion.middle());
        return LatinHypercube.of(names(alloy)).sample(middle, shares -> {
            double piece = Math.exp(spreadOfLog * NORMAL.inverseCumulativeProbability(shares[PIECE]));
            return Math.min(StrainLife.RUN_OUT, law.cycles(strain, shares) * motion.at(shares[MOTION]) * piece);
        });
    }

    /** NiTi alloys share the law of conventional wire, to which each adds its own shift and gain. */
    private static List<String> names(Alloy alloy) {
        String wire = alloy.superelastic() ? "life.niti." : "life.steel.";
        String own = "life." + alloy.id() + ".";
        return List.of(
                wire + "point",
                wire + "beta",
                wire + "endurance",
                own + "shift",
                own + "gain",
                "life.reciprocation",
                "life.piece");
    }

    private static double strain(Tube tube, Design design, double level) {
        return design.diameterMm(level) / (2 * tube.radiusMm());
    }

    /** Diameters are linear between the taper's steps, so the thickest level is one of them or an end of the reach. */
    private static double worstLevel(Tube tube, Design design) {
        double from = Math.max(0, tube.middleMm() - tube.reachMm());
        double to = Math.min(design.lengthMm(), tube.middleMm() + tube.reachMm());
        List<Double> levels = new ArrayList<>(List.of(tube.middleMm(), from, to));
        design.taper().stream()
                .map(TaperSegment::toMm)
                .filter(level -> level > from && level < to)
                .forEach(levels::add);
        return levels.stream()
                .max(Comparator.comparingDouble(design::diameterMm))
                .orElseThrow();
    }
}
