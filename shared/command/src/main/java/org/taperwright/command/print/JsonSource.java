package org.taperwright.command.print;

import org.taperwright.mechanics.comparison.Metric;

/**
 * Where a quantity comes from.
 *
 * @param key its key among the sources of a result
 * @param text the source in words
 */
record JsonSource(String key, String text) {
    static final JsonSource DESIGN = new JsonSource("design", "The design's own definition.");
    static final JsonSource CONTOUR =
            new JsonSource("contour", "Contour integrals over the outline; distances and angles measured on it.");
    static final JsonSource TORSION = new JsonSource(
            "torsion", "Saint-Venant's torsion by finite elements; fully plastic torque by Nadai's sand heap.");
    static final JsonSource STIFFNESS = new JsonSource(
            "stiffness",
            "Section properties with the alloy's elastic constants and the factors of the turning flutes, by finite "
                    + "elements of a uniform twisted bar.");
    static final JsonSource PLASTIC = new JsonSource(
            "plastic-torque-along", "Nadai's sand heap with von Mises' shear yield; band from the alloy's yield.");
    static final JsonSource BENDING = new JsonSource(
            "bending-test",
            "Bending test after the idea of ISO 3630-1; large-deflection rod with the alloy's stress law, elastic "
                    + "unloading; band from the alloy's constants.");
    static final JsonSource TWISTING = new JsonSource(
            "twisting-test",
            "Twisting test after the idea of ISO 3630-1; torque against twist by the alloy's shear law; band from the "
                    + "alloy's constants.");

    /** The source of a metric, under its identifier. */
    static JsonSource of(Metric metric) {
        return new JsonSource(metric.id(), metric.source());
    }
}
