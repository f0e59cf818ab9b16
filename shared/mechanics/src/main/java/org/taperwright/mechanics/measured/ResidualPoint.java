package org.taperwright.mechanics.measured;

/**
 * A measured point beside the computed one.
 *
 * @param at angle in degrees, or strain amplitude of a life
 * @param measured moment or torque in N mm, or cycles
 * @param computed the same, computed
 */
public record ResidualPoint(double at, double measured, double computed) {
    /** Measured less computed. */
    public double difference() {
        return measured - computed;
    }
}
