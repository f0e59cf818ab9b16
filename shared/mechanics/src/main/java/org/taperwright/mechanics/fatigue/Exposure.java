package org.taperwright.mechanics.fatigue;

import org.taperwright.mechanics.design.Motion;

/**
 * A stretch of a level's past: so many cycles of one strain.
 *
 * @param strain strain amplitude
 * @param cycles cycles (turns), not negative
 * @param motion the motion they were made in
 */
public record Exposure(double strain, double cycles, Motion motion) {
    public Exposure {
        if (!(strain >= 0) || !Double.isFinite(strain) || !(cycles >= 0) || !Double.isFinite(cycles)) {
            throw new IllegalArgumentException("no exposure: " + cycles + " cycles of " + strain);
        }
    }
}
