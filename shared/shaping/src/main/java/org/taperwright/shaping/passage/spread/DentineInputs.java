package org.taperwright.shaping.passage.spread;

import java.util.List;
import org.taperwright.mechanics.uncertainty.Spread;
import org.taperwright.shaping.passage.stroke.ShapingConstants;

/**
 * The uncertain constants of dentine and edges. The middle of each is the {@link ShapingConstants#USUAL usual} one; no spread has been
 * measured, so all are assumed: a factor of three either way for wear and for the energy of cutting.
 */
final class DentineInputs {
    private static final double FACTOR = 3;
    private static final ShapingConstants USUAL = ShapingConstants.USUAL;
    private static final Spread WEAR = byFactor(USUAL.wearPerMpa(), FACTOR);
    private static final Spread CUTTING = byFactor(USUAL.cuttingMpa(), FACTOR);
    private static final Spread FRICTION = Spread.even(0.2, 0.5);
    private static final Spread EDGE = byFactor(USUAL.edgeNPerMm(), 2.5);
    private static final String ASSUMED = "assumed, no source";

    static final List<UncertainInput> ALL = List.of(
            new UncertainInput(
                    "shaping.wear",
                    "wear of dentine",
                    "1/MPa",
                    WEAR::at,
                    "assumed about the order of published transportation (Madani and others, Iran Endod J 2014;9:109)"),
            new UncertainInput("shaping.cutting", "energy of cutting dentine", "MPa", CUTTING::at, ASSUMED),
            new UncertainInput("shaping.friction", "friction on the wall", "", FRICTION::at, ASSUMED),
            new UncertainInput("shaping.edge", "force that ploughs an edge", "N/mm", EDGE::at, ASSUMED));

    private DentineInputs() {}

    /** The constants at shares of their spreads, in the order of {@link #ALL}. */
    static ShapingConstants at(double[] shares) {
        return new ShapingConstants(
                USUAL.springsMpaPerMm(),
                WEAR.at(shares[0]),
                CUTTING.at(shares[1]),
                FRICTION.at(shares[2]),
                EDGE.at(shares[3]));
    }

    private static Spread byFactor(double middle, double factor) {
        return Spread.byRatio(middle / factor, middle * factor);
    }
}
