package org.taperwright.mechanics.alloy;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;

/**
 * The strain-life constants of the alloys.
 *
 * <p>NiTi: exponent -0.40 to -0.56 (Cheung and Darvell, Int Endod J 2007, 286 instruments at 250 rpm; abstract read to
 * "-0.40 to -", the rest from memory, medium confidence). Anchor: rotating-bending wire lasts below 100 000 cycles in the
 * martensite range and over 10 million in the R-phase range (Tobushi and others, J Eng Mater Technol 1998;120:64, abstract
 * read); the strain between them is 0.3 to 0.45 % at 10 million cycles (medical wire, from memory, medium confidence).
 * Strains tested: from memory, low confidence. Heat-treated: three to eight times the cycles (Shen and others, J Endod 2011,
 * abstract read). R-phase: 0.1 to 0.3 % more strain (Shape Mem Superelasticity 2019, abstract read). Reciprocation: 241 to
 * 422 % more cycles (Martins and others, Materials 2026;19:387, read). Scatter: standard deviations up to 30 % (Hülsmann,
 * Donnermeyer and Schäfer, Int Endod J 2019;52:1427, abstract read). Temperature changes life by up to 500 % (the same) and
 * is not in it.
 *
 * <p>Steel: Coffin and Manson's law through the true strain at fracture at half a cycle, exponent -0.5 to -0.6 (handbooks,
 * from memory, medium confidence); no test of steel instruments is known here, so every result is extrapolated. Endurance
 * about 0.4 of the strength over Young's modulus (from memory, low confidence).
 */
final class StrainLives {
    private static final double SCATTER_HIGH = Math.exp(1.645 * 0.3);
    private static final Reading NO_TEST = Reading.of(0);

    private StrainLives() {}

    /** Adds the constants of a steel to those of its law; its true strain at fracture is by von Mises from twisting. */
    static Map<String, Reading> steel(Map<String, Reading> law) {
        Map<String, Reading> all = common(law);
        Reading shear = law.get(Fracture.SHEAR_STRAIN.name());
        Band band = shear.band().orElseThrow();
        double root = Math.sqrt(3);
        all.put(StrainLife.STRAIN.name(), about(shear.value() / root, band.low() / root, band.high() / root));
        all.put(StrainLife.CYCLES.name(), Reading.of(0.5));
        all.put(StrainLife.EXPONENT.name(), about(-0.55, -0.6, -0.5));
        all.put(StrainLife.ENDURANCE.name(), about(0.0045, 0.0035, 0.0055));
        all.put(StrainLife.LEAST.name(), NO_TEST);
        all.put(StrainLife.MOST.name(), NO_TEST);
        return all;
    }

    /** Adds the constants of superelastic NiTi. */
    static Map<String, Reading> superelastic(Map<String, Reading> law) {
        return niti(law, about(0.0045, 0.0035, 0.006), about(1e5, 8e4, 1.25e5), about(0.00375, 0.003, 0.0045));
    }

    /** Adds the constants of R-phase NiTi: 0.2 % more strain. */
    static Map<String, Reading> rPhase(Map<String, Reading> law) {
        return niti(law, about(0.0065, 0.005, 0.0085), about(1e5, 8e4, 1.25e5), about(0.00575, 0.004, 0.0075));
    }

    /** Adds the constants of heat-treated NiTi: 4.9 times the cycles, the geometric mean of three and eight. */
    static Map<String, Reading> heatTreated(Map<String, Reading> law) {
        return niti(law, about(0.0045, 0.0035, 0.006), about(4.9e5, 3e5, 8e5), about(0.00475, 0.003, 0.0065));
    }

    private static Map<String, Reading> niti(
            Map<String, Reading> law, Reading strain, Reading cycles, Reading endurance) {
        Map<String, Reading> all = common(law);
        all.put(StrainLife.STRAIN.name(), strain);
        all.put(StrainLife.CYCLES.name(), cycles);
        all.put(StrainLife.EXPONENT.name(), about(-0.48, -0.56, -0.40));
        all.put(StrainLife.ENDURANCE.name(), endurance);
        all.put(StrainLife.LEAST.name(), Reading.of(0.01));
        all.put(StrainLife.MOST.name(), Reading.of(0.08));
        return all;
    }

    private static Map<String, Reading> common(Map<String, Reading> law) {
        Map<String, Reading> all = new TreeMap<>(law);
        all.put(StrainLife.RECIPROCATION.name(), about(4.2, 3.413, 5.224));
        all.put(StrainLife.SCATTER.name(), about(1, 1 / SCATTER_HIGH, SCATTER_HIGH));
        return all;
    }

    private static Reading about(double value, double low, double high) {
        return new Reading(value, Optional.of(new Band(low, high)));
    }
}
