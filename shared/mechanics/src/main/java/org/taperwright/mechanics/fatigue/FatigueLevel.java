package org.taperwright.mechanics.fatigue;

/**
 * What turning in a tube does to one level of a blade.
 *
 * @param levelMm the level, mm from the tip
 * @param strain strain amplitude of its surface
 * @param cycles cycles to fracture there
 */
public record FatigueLevel(double levelMm, double strain, double cycles) {}
