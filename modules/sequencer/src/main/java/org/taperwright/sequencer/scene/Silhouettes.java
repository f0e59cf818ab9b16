package org.taperwright.sequencer.scene;

import java.awt.geom.Path2D;
import java.util.function.DoubleUnaryOperator;

/** Paths of things that are symmetric about the canal's axis, drawn along it. */
final class Silhouettes {
    private static final double STEP_MM = 0.05;

    private Silhouettes() {}

    /**
     * The shape between two depths.
     *
     * @param diameterMm diameter, mm, at a depth from the coronal reference point
     * @param axis height of the axis, px
     */
    static Path2D of(DoubleUnaryOperator diameterMm, double fromMm, double toMm, SceneScale scale, double axis) {
        Path2D path = new Path2D.Double();
        int steps = (int) Math.max(1, Math.ceil((toMm - fromMm) / STEP_MM));
        for (int i = 0; i <= steps; i++) {
            double depth = fromMm + (toMm - fromMm) * i / steps;
            double y = axis - half(diameterMm, depth, scale);
            if (i == 0) {
                path.moveTo(scale.x(depth), y);
            } else {
                path.lineTo(scale.x(depth), y);
            }
        }
        for (int i = steps; i >= 0; i--) {
            double depth = fromMm + (toMm - fromMm) * i / steps;
            path.lineTo(scale.x(depth), axis + half(diameterMm, depth, scale));
        }
        path.closePath();
        return path;
    }

    private static double half(DoubleUnaryOperator diameterMm, double depthMm, SceneScale scale) {
        return Math.max(0, diameterMm.applyAsDouble(depthMm)) / 2 * scale.acrossPixelsPerMm();
    }
}
