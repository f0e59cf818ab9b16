package org.taperwright.mechanics.fatigue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.properties.BladeStiffness;
import org.taperwright.mechanics.uncertainty.LatinHypercube;
import org.taperwright.mechanics.uncertainty.Sampled;
import org.taperwright.mechanics.uncertainty.Spread;

/**
 * Turning in a plain tube until fracture. The strain amplitude of a level's surface follows from the curvature that the
 * tube gives it ({@link Tube}),
 *
 * <pre>eps = kappa d / 2 * k_EI k_sigma</pre>
 *
 * the outer fibre of a straight bar (definition of Cheung and Darvell, Int Endod J 2007) times what turning flutes make of
 * it: they take less moment for the curvature and spread or gather its stress
 * ({@link org.taperwright.mechanics.properties.BladeStiffness#strainAtCurvature}; not yet confirmed by a solid model,
 * an assumption beyond the elastic range, and for unequal principal axes the mean of a turn). The alloy's law gives the cycles.
 * Torque is not in it. The law's exponents were found with the nominal strain {@code d / 2R} of fluted instruments, its
 * life at 3 % with round wire; both sets of readers should know that the factor sits between them.
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

    private static final double SPREAD_OF_LOG = Math.sqrt(Math.log1p(SCATTER * SCATTER));
    private static final Spread ONCE = Spread.exactly(1);
    private static final int STEPS = 24;

    private static final NormalDistribution NORMAL = new NormalDistribution();
    private static final int MOTION = StrainLife.CONSTANTS;
    private static final int PIECE = StrainLife.CONSTANTS + 1;

    private Fatigue() {}

    /** A design turning in a tube; filing and reaming are reckoned as if it turned on. */
    public static FatigueResult in(Tube tube, Design design, Alloy alloy, double speedRpm) {
        return in(tube, design, alloy, BladeSections.of(design), speedRpm);
    }

    /** The same with the sections known. */
    public static FatigueResult in(Tube tube, Design design, Alloy alloy, BladeSections sections, double speedRpm) {
        FatigueLevel worst = along(tube, design, alloy, sections).stream()
                .max(Comparator.comparingDouble(FatigueLevel::strain))
                .orElseThrow();
        double strain = worst.strain();
        StrainLife law = StrainLives.of(alloy);
        Motion motion = design.motion();
        boolean otherMotion = motion != Motion.ROTATION && !(motion == Motion.RECIPROCATION && alloy.superelastic());
        return new FatigueResult(
                tube,
                strain,
                worst.levelMm(),
                cycles(strain, motion, alloy),
                speedRpm,
                otherMotion || law.extrapolates(strain),
                law.source());
    }

    /** Each level of a blade that lies in a tube's curve, from the tip on; what the curve does not reach is left out. */
    public static List<FatigueLevel> along(Tube tube, Design design, Alloy alloy, BladeSections sections) {
        BladeStiffness blade = new BladeStiffness(design, sections, alloy.poisson());
        StrainLife law = StrainLives.of(alloy);
        List<FatigueLevel> result = new ArrayList<>();
        for (double level : levels(tube, design)) {
            double turned = level > design.workingPartMm() ? 1 : blade.strainAtCurvature(level);
            double strain = tube.curvature(level) * design.diameterMm(level) / 2 * turned;
            result.add(new FatigueLevel(level, strain, life(law, strain, design.motion())));
        }
        return result;
    }

    /** Cycles to fracture at a strain amplitude with every constant in the middle of its spread. */
    public static double life(double strain, Motion motion, Alloy alloy) {
        return life(StrainLives.of(alloy), strain, motion);
    }

    /** Cycles to fracture with every constant in the middle of its spread. */
    static double life(StrainLife law, double strain, Motion motion) {
        return Math.min(StrainLife.RUN_OUT, law.cycles(strain) * gain(motion).middle());
    }

    /** Cycles to fracture of one sample. */
    static double life(StrainLife law, double strain, Motion motion, double[] shares) {
        double piece = Math.exp(SPREAD_OF_LOG * NORMAL.inverseCumulativeProbability(shares[PIECE]));
        return Math.min(
                StrainLife.RUN_OUT, law.cycles(strain, shares) * gain(motion).at(shares[MOTION]) * piece);
    }

    /** Cycles to fracture at a strain, with what the law's constants and the scatter between like pieces make of them. */
    public static Sampled cycles(double strain, Motion motion, Alloy alloy) {
        StrainLife law = StrainLives.of(alloy);
        return sampled(alloy, life(law, strain, motion), shares -> life(law, strain, motion, shares));
    }

    /** A value with what is reckoned from each sample's shares of the constants of an alloy's life. */
    static Sampled sampled(Alloy alloy, double value, ToDoubleFunction<double[]> sample) {
        return LatinHypercube.of(names(alloy)).sample(value, sample);
    }

    /**
     * Names of the constants of an alloy's life, those of its law first. NiTi alloys share the law of conventional wire, to which
     * each adds its own shift and gain; a constant that an alloy gives itself is its own.
     */
    public static List<String> names(Alloy alloy) {
        String wire = alloy.superelastic() ? "life.niti." : "life.steel.";
        String own = "life." + alloy.id() + ".";
        return List.of(
                (has(alloy, LifeConstant.POINT) ? own : wire) + "point",
                (has(alloy, LifeConstant.EXPONENT) ? own : wire) + "beta",
                wire + "endurance",
                own + "shift",
                own + "gain",
                "life.reciprocation",
                "life.piece");
    }

    private static boolean has(Alloy alloy, LifeConstant constant) {
        return alloy.life().containsKey(constant.id());
    }

    private static Spread gain(Motion motion) {
        return motion == Motion.RECIPROCATION ? RECIPROCATION : ONCE;
    }

    /** Even steps over the curve, where the curvature or the taper changes, and the tip or shaft's end within it. */
    private static TreeSet<Double> levels(Tube tube, Design design) {
        double low = Math.max(0, tube.middleMm() - tube.reachMm());
        double high = Math.min(design.lengthMm(), tube.middleMm() + tube.reachMm());
        TreeSet<Double> levels = new TreeSet<>();
        for (int k = 0; k <= STEPS; k++) {
            levels.add(low + (high - low) * k / STEPS);
        }
        levels.add(tube.middleMm() - tube.flatMm());
        levels.add(tube.middleMm() + tube.flatMm());
        design.taper().stream().map(TaperSegment::toMm).forEach(levels::add);
        levels.removeIf(level -> level < low || level > high);
        if (levels.isEmpty()) {
            levels.add(design.lengthMm());
        }
        return levels;
    }
}
