package org.taperwright.sequencer.outcome;

import java.util.Set;
import org.taperwright.shaping.passage.spread.ShapedQuantity;

/**
 * How a quantity of the engine is written in the window: torques in N·cm, as motors have them, and shares in per cent.
 *
 * @param label what people call it, with its unit
 * @param factor what a value in the engine's unit is multiplied by
 */
record ShownQuantity(String label, double factor) {
    private static final Set<String> SHARES = Set.of("lifeSpent", "roomFilled", "greatestStrain", "touchedShare");

    static ShownQuantity of(ShapedQuantity quantity) {
        String name = Character.toUpperCase(quantity.label().charAt(0))
                + quantity.label().substring(1);
        if (quantity.unit().equals("N·mm")) {
            return new ShownQuantity(name + " (N·cm)", 0.1);
        }
        if (SHARES.contains(quantity.name())) {
            return new ShownQuantity(name + " (%)", 100);
        }
        return new ShownQuantity(
                quantity.unit().isEmpty() ? name + " (times)" : name + " (" + quantity.unit() + ")", 1);
    }

    /** A value in words. */
    String written(double value) {
        return OutcomeCell.written(value * factor);
    }
}
