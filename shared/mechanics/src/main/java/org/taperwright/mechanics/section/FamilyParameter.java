package org.taperwright.mechanics.section;

/**
 * A number that a family needs.
 *
 * @param name key in the JSON form, lowerCamelCase
 * @param label name for people
 * @param unit "d" for lengths in diameters, "°" for degrees, "" for plain numbers
 * @param least smallest value allowed
 * @param most largest value allowed
 * @param initial value when none is given
 * @param step how far one click of a spinner moves it
 * @param whole whether only whole numbers make sense
 * @param explanation one sentence for a tooltip
 */
public record FamilyParameter(
        String name,
        String label,
        String unit,
        double least,
        double most,
        double initial,
        double step,
        boolean whole,
        String explanation) {}
