package org.taperwright.mechanics.section;

import java.util.List;

/**
 * Plug-in point: a family of sections. Register an implementation by a service line; forms, JSON checks and the
 * command line follow from what it declares.
 */
public interface SectionFamily {
    /** Identifier in the JSON form, lower case with hyphens. */
    String id();

    /** Name for people, in the trade's words, sentence case. */
    String label();

    /** One sentence on what the family is. */
    String explanation();

    /** Parameters in the order a form shows them. */
    List<FamilyParameter> parameters();

    /** Whether the outline comes from the shape's points. */
    default boolean takesPoints() {
        return false;
    }

    /**
     * The exact outline, before rounding and margins, or what is wrong with the shape.
     *
     * @param shape a shape of this family
     */
    OutlineResult outline(SectionShape shape);

    /** The value of a declared parameter: given, or the default. */
    default double value(SectionShape shape, String name) {
        Double given = shape.parameters().get(name);
        if (given != null) {
            return given;
        }
        return parameters().stream()
                .filter(parameter -> parameter.name().equals(name))
                .findFirst()
                .orElseThrow()
                .initial();
    }
}
