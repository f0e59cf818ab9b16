package org.taperwright.shaping.passage.stroke;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.taperwright.shaping.placement.Placement;

/**
 * Share of an instrument's life that bending in a curve has spent, by level: each stroke adds its turns over the turns to fracture
 * at the strain there (Miner's sum), on a grid of 0.1 mm.
 * Standing: index.
 */
final class DamageByLevel {
    private static final double GRID_MM = 0.1;

    private final double[] spent;

    private DamageByLevel(double[] spent) {
        this.spent = spent;
    }

    /** Of an instrument not yet used. */
    static DamageByLevel none(double lengthMm) {
        return new DamageByLevel(new double[(int) Math.round(lengthMm / GRID_MM) + 1]);
    }

    /** Adds turns in a placement. */
    void add(Placement placement, double turns, DoubleUnaryOperator cyclesAtStrain) {
        int node = placement.nodes() - 1;
        for (int g = 0; g < spent.length; g++) {
            double level = g * GRID_MM;
            while (node > 0 && placement.levelMm(node - 1) < level) {
                node--;
            }
            if (node == 0) {
                return;
            }
            double from = placement.levelMm(node);
            double share = Math.max(0, (level - from) / (placement.levelMm(node - 1) - from));
            double strain = placement.strain(node) + share * (placement.strain(node - 1) - placement.strain(node));
            spent[g] += turns / cyclesAtStrain.applyAsDouble(strain);
        }
    }

    /** Level at which most is spent, mm. */
    double worstLevelMm() {
        int worst = 0;
        for (int g = 1; g < spent.length; g++) {
            worst = spent[g] > spent[worst] ? g : worst;
        }
        return worst * GRID_MM;
    }

    /** Share spent there; 1 is fracture. */
    double greatest() {
        return Arrays.stream(spent).max().orElse(0);
    }
}
