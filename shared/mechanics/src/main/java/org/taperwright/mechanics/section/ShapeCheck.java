package org.taperwright.mechanics.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.work.Fault;

/** Whether the numbers of a shape are those its family asks for, and within limits. */
final class ShapeCheck {
    /** Widest margin and largest edge radius, and the least that makes sense, in diameters. */
    static final double WIDEST_LAND = 0.3;

    static final double LEAST_LAND = 0.002;
    static final double LARGEST_ROUNDING = 0.05;
    static final double LEAST_ROUNDING = 0.0005;

    private ShapeCheck() {}

    static List<Fault> faults(SectionFamily family, SectionShape shape) {
        List<Fault> faults = new ArrayList<>();
        shape.parameters()
                .forEach((name, value) -> parameterFault(family, name, value).ifPresent(faults::add));
        optionFault("landWidth", "width of a land", shape.landWidth(), LEAST_LAND, WIDEST_LAND)
                .ifPresent(faults::add);
        optionFault("edgeRounding", "radius of the edges", shape.edgeRounding(), LEAST_ROUNDING, LARGEST_ROUNDING)
                .ifPresent(faults::add);
        if (!family.takesPoints() && !shape.points().isEmpty()) {
            faults.add(Fault.unusual(
                    "points",
                    "a section of the family \"" + family.id() + "\" has points",
                    "points only with the family \"custom\"; they are not used"));
        }
        return faults;
    }

    private static Optional<Fault> parameterFault(SectionFamily family, String name, double value) {
        String where = "parameters." + name;
        Optional<FamilyParameter> declared = family.parameters().stream()
                .filter(parameter -> parameter.name().equals(name))
                .findFirst();
        if (declared.isEmpty()) {
            String known = String.join(
                    ", ",
                    family.parameters().stream().map(FamilyParameter::name).toList());
            return Optional.of(Fault.impossible(
                    where,
                    "the family \"" + family.id() + "\" has no parameter \"" + name + "\"",
                    known.isEmpty() ? "no parameters" : "one of " + known));
        }
        FamilyParameter parameter = declared.orElseThrow();
        String expected = "%s from %s to %s%s"
                .formatted(
                        parameter.whole() ? "a whole number" : "a number",
                        Numbers.text(parameter.least()),
                        Numbers.text(parameter.most()),
                        parameter.unit().isEmpty() ? "" : " " + parameter.unit());
        boolean good = value >= parameter.least()
                && value <= parameter.most()
                && (!parameter.whole() || value == Math.rint(value));
        return good
                ? Optional.empty()
                : Optional.of(Fault.impossible(where, parameter.label() + " is " + Numbers.text(value), expected));
    }

    private static Optional<Fault> optionFault(String where, String what, double value, double least, double most) {
        if (value == 0 || value >= least && value <= most) {
            return Optional.empty();
        }
        return Optional.of(Fault.impossible(
                where,
                "the " + what + " is " + Numbers.text(value) + " d",
                "0 for none, or from " + Numbers.text(least) + " to " + Numbers.text(most) + " d"));
    }
}
