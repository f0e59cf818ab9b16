package org.taperwright.mechanics.comparison.sweep;

import org.taperwright.mechanics.design.Design;

/**
 * A design with one parameter set.
 *
 * @param place the amount in its unit, or the option's number from 0
 * @param words the value for people, without the unit
 * @param design the design
 */
public record Setting(double place, String words, Design design) {}
