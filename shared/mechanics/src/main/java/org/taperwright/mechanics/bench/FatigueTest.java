package org.taperwright.mechanics.bench;

import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.StrainLife;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.uncertainty.Sampling;

/**
 * Turning in a plain curved tube up to fracture.
 *
 * <pre>eps = kappa(x) d(x) / 2          greatest over the levels x
 * N   = N0 (eps / eps0)^(1/b) * gain * scatter</pre>
 *
 * with the curvature kappa of the {@link Tube} and the alloy's {@link StrainLife}; the gain is 1 in rotation. One turn, or
 * one to-and-fro cycle, is one cycle; speed has no effect of its own (Pruett, Clement and Carnes, J Endod 1997;23:77; Tobushi
 * and others, J Eng Mater Technol 1998;120:64; abstracts read). The section enters by its circumscribed circle only, as in
 * the definition {@code d / 2R} of Cheung and Darvell (Int Endod J 2007, abstract read). Validity: an instrument that follows
 * the tube, at 23 to 37 °C, not corroded and without torque.
 */
public final class FatigueTest {
    /** Turns a minute that are usual for motors: 250 to 500 (general teaching; 300 read). */
    public static final double USUAL_RPM = 300;

    private static final int PLACES = 128;

    private FatigueTest() {}

    /** The usual tube and speed; hand instruments are turned as in rotation. */
    public static FatigueResult run(Design design, Alloy alloy) {
        Motion motion = design.motion() == Motion.RECIPROCATION ? Motion.RECIPROCATION : Motion.ROTATION;
        return run(design, alloy, Tube.USUAL, motion, USUAL_RPM);
    }

    /** Turns a design in a tube; any motion but reciprocation counts as rotation. */
    public static FatigueResult run(Design design, Alloy alloy, Tube tube, Motion motion, double speedRpm) {
        double worst = worstMm(design, tube);
        double strain = strain(design, tube, worst);
        Reading cycles = cycles(alloy, motion, strain);
        double minutes = 60 / speedRpm;
        return new FatigueResult(
                tube,
                motion,
                speedRpm,
                strain,
                worst,
                cycles,
                scaled(cycles, minutes),
                strain <= alloy.constant(StrainLife.ENDURANCE.name()),
                strain < alloy.constant(StrainLife.LEAST.name()) || strain > alloy.constant(StrainLife.MOST.name()));
    }

    /** Cycles to fracture at a strain amplitude, with the band of the alloy's constants. */
    public static Reading cycles(Alloy alloy, Motion motion, double strain) {
        List<Reading> constants = List.of(
                alloy.reading(StrainLife.STRAIN.name()),
                alloy.reading(StrainLife.CYCLES.name()),
                alloy.reading(StrainLife.EXPONENT.name()),
                alloy.reading(StrainLife.ENDURANCE.name()),
                alloy.reading(StrainLife.SCATTER.name()),
                motion == Motion.RECIPROCATION ? alloy.reading(StrainLife.RECIPROCATION.name()) : Reading.of(1));
        return Sampling.reading(constants, c -> {
            // no curve, no strain: it lasts as long as anything here is followed
            double ratio = Math.max(strain, 1e-6) / c[0];
            double law = Math.max(0.25, c[1] * Math.pow(ratio, 1 / c[2]) * c[4] * c[5]);
            return Math.min(strain <= c[3] ? Math.max(law, StrainLife.ENDURED) : law, 1e3 * StrainLife.ENDURED);
        });
    }

    private static Reading scaled(Reading cycles, double by) {
        Band band = cycles.band().orElseThrow();
        return new Reading(cycles.value() * by, Optional.of(new Band(band.low() * by, band.high() * by)));
    }

    private static double worstMm(Design design, Tube tube) {
        double reach = (tube.arcMm() + tube.easingMm()) / 2;
        double from = Math.max(0, tube.middleMm() - reach);
        double to = Math.min(Math.max(design.lengthMm(), design.workingPartMm()), tube.middleMm() + reach);
        double worst = from;
        for (int i = 1; i <= PLACES; i++) {
            double level = from + (to - from) * i / PLACES;
            worst = strain(design, tube, level) > strain(design, tube, worst) + 1e-12 ? level : worst;
        }
        return worst;
    }

    private static double strain(Design design, Tube tube, double levelMm) {
        return tube.curvature(levelMm) * design.diameterMm(levelMm) / 2;
    }
}
