package org.taperwright.mechanics.alloy;

/**
 * A constant that a stress law needs.
 *
 * @param name key in the JSON form, lowerCamelCase
 * @param label name for people
 * @param unit unit, empty for a plain number
 * @param explanation one sentence for a tooltip
 */
public record LawConstant(String name, String label, String unit, String explanation) {}
