package org.taperwright.mechanics.fatigue;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.uncertainty.Spread;

/**
 * The strain-life laws of the alloys. They rest on few numbers: no table of cycles of whole instruments was at hand. Exponents,
 * and the ratios between alloys and motions, are published and are inputs here; that results show them again is no evidence.
 * The absolute life is worth little: the temperatures over which Tobushi's line is spread were chosen so that instruments
 * come out near the few hundred cycles that are remembered of tube tests (low confidence). Only the order between alloys,
 * diameters and curves says something.
 */
public final class StrainLives {
    /**
     * Life at 3 % by Tobushi's {@code 0.248 N^-0.28 10^(-0.0032 (T - Ms))}, turned in water at T - Ms of 60 K (short) to 0 K
     * (long); that span was chosen, see above.
     */
    private static final Spread NITI_POINT = Spread.byRatio(tobushi(60), tobushi(0));

    private static final Spread NITI_BETA = Spread.even(0.40, 0.56);
    private static final Spread NITI_ENDURANCE = Spread.even(0.003, 0.0045);
    private static final double NITI_FROM = 0.01;
    private static final double NITI_TO = 0.06;
    private static final String NITI = "Exponent: Cheung and Darvell, Int Endod J 2007 (0.40 to 0.56; the latter from "
            + "memory). Life at 3 %: Tobushi and others, J Eng Mater Technol 2000;122:186 (from memory, low confidence), "
            + "over temperatures chosen so that lives come near remembered few hundred cycles. "
            + "Endurance 0.3 to 0.45 %: Pelton and others (from memory). Range 1 to 6 %: from memory, low confidence.";

    private static final StrainLife CONVENTIONAL = niti(Spread.exactly(0), Spread.exactly(1), NITI);
    private static final StrainLife R_PHASE = niti(
            Spread.even(0.001, 0.003),
            Spread.exactly(1),
            NITI + " R-phase: 0.1 to 0.3 % more strain borne at 10⁷ cycles, Shape Mem Superelasticity 2019 (abstract "
                    + "read), taken to hold at shorter lives.");
    private static final StrainLife HEAT_TREATED = niti(
            Spread.exactly(0),
            Spread.byRatio(3, 8),
            NITI + " Heat-treated: 3 to 8 lives of conventional wire, Shen and others, J Endod 2011 (abstract read).");

    /**
     * Coffin and Manson's plastic line {@code eps_f (2 N)^c}: ductility 0.1 to 0.4 and c of -0.6 to -0.5; its elastic part
     * is left out, which shortens lives below about 0.6 %.
     */
    private static final StrainLife STEEL = new StrainLife(
            Spread.byRatio(coffinManson(0.1), coffinManson(0.4)),
            Spread.even(0.50, 0.60),
            Spread.even(0.0035, 0.0055),
            Spread.exactly(0),
            Spread.exactly(1),
            0.006,
            0.02,
            "Coffin-Manson exponents of 302 and 304 (fatigue handbooks, from memory, medium confidence); ductility and "
                    + "endurance from memory, low confidence. Nothing specific to instruments was found.");

    private StrainLives() {}

    /** The law of an alloy: its kin's, with the constants that the alloy gives itself. */
    public static StrainLife of(Alloy alloy) {
        StrainLife law = ofKin(alloy);
        List<String> own = new ArrayList<>();
        for (LifeConstant constant : LifeConstant.values()) {
            Reading given = alloy.life().get(constant.id());
            if (given != null) {
                law = constant.in(law, given);
                own.add(constant.label());
            }
        }
        return own.isEmpty() ? law : law.from(String.join(", ", own) + ": " + alloy.label() + ". The rest: ");
    }

    private static StrainLife ofKin(Alloy alloy) {
        return switch (alloy.kin()) {
            case "niti-r-phase" -> R_PHASE;
            case "niti-martensitic" -> HEAT_TREATED;
            default -> alloy.superelastic() ? CONVENTIONAL : STEEL;
        };
    }

    private static StrainLife niti(Spread shift, Spread gain, String source) {
        return new StrainLife(NITI_POINT, NITI_BETA, NITI_ENDURANCE, shift, gain, NITI_FROM, NITI_TO, source);
    }

    private static double tobushi(double kelvinAboveMs) {
        return Math.pow(0.248 * Math.pow(10, -0.0032 * kelvinAboveMs) / StrainLife.POINT, 1 / 0.28);
    }

    private static double coffinManson(double ductility) {
        return Math.pow(ductility / StrainLife.POINT, 1 / 0.55) / 2;
    }
}
