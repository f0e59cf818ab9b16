package org.taperwright.mechanics.design;

import org.taperwright.mechanics.section.SectionShape;

/** The section at a level, in mm from the tip; between stations outlines blend at equal angle or arc length. */
public record SectionStation(double levelMm, SectionShape shape) {}
