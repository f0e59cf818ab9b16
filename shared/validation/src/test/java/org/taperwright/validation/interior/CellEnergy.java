package org.taperwright.validation.interior;

import java.util.function.DoubleUnaryOperator;
import org.taperwright.shaping.canal.Centreline;
import org.taperwright.shaping.canal.Frame;
import org.taperwright.shaping.canal.Vector;

/** Bending energy of one cell from the places in space of three nodes: {@code W(|r' x r''| / |r'|^3) |r'| w}. */
final class CellEnergy {
    private final Frame[] frames = new Frame[3];
    private final double spacing;
    private final double weight;
    private final DoubleUnaryOperator energy;

    CellEnergy(Centreline line, double depth, double spacing, double weight, DoubleUnaryOperator energy) {
        for (int i = 0; i < 3; i++) {
            frames[i] = line.at(depth + (i - 1) * spacing);
        }
        this.spacing = spacing;
        this.weight = weight;
        this.energy = energy;
    }

    /** Energy at the offsets of the three nodes, two each. */
    double at(double[] u) {
        Vector slope = slope(u);
        return weight * slope.length() * energy.applyAsDouble(curvature(u));
    }

    double curvature(double[] u) {
        Vector slope = slope(u);
        double h = spacing;
        Vector bend = place(2, u).plus(-2, place(1, u)).plus(1, place(0, u)).times(1 / (h * h));
        return slope.cross(bend).length() / Math.pow(slope.length(), 3);
    }

    private Vector slope(double[] u) {
        return place(2, u).minus(place(0, u)).times(1 / (2 * spacing));
    }

    private Vector place(int i, double[] u) {
        Frame frame = frames[i];
        return frame.place().plus(u[2 * i], frame.first()).plus(u[2 * i + 1], frame.second());
    }
}
