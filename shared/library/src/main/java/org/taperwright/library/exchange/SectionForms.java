package org.taperwright.library.exchange;

import static org.taperwright.library.exchange.form.Field.required;
import static org.taperwright.library.exchange.form.Field.standing;
import static org.taperwright.library.exchange.form.Forms.identifier;
import static org.taperwright.library.exchange.form.Forms.list;
import static org.taperwright.library.exchange.form.Forms.number;
import static org.taperwright.library.exchange.form.Forms.numbersByName;

import java.util.List;
import java.util.Map;
import org.taperwright.library.exchange.form.Field;
import org.taperwright.library.exchange.form.Form;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.SectionShape;

/**
 * The form of a section. Which families there are and what they need is for the checks of a design, so that a design
 * with an unknown family can still be read, kept and mended.
 */
final class SectionForms {
    private static final double FAR = 1e6;
    private static final Form<Double> COORDINATE = number(-FAR, FAR, "");

    private static final Field<Point, Double> X = required("x", COORDINATE, "to the right", Point::x);
    private static final Field<Point, Double> Y = required("y", COORDINATE, "upwards", Point::y);

    private static final RecordForm<Point> POINT = new RecordForm<>(
            "point",
            "A point of a custom outline, from the instrument's axis, in any one unit.",
            true,
            List.of(X, Y),
            values -> new Point(values.of(X), values.of(Y)));

    private static final Field<SectionShape, String> FAMILY =
            required("family", identifier(), "identifier of the section's family", SectionShape::family);
    private static final Field<SectionShape, Map<String, Double>> PARAMETERS = standing(
            "parameters",
            Map.of(),
            numbersByName(number(-FAR, FAR, ""), 40),
            "the family's parameters by name; one left out takes the family's own value",
            SectionShape::parameters);
    private static final Field<SectionShape, Double> EDGE_ROUNDING = standing(
            "edgeRounding",
            0.0,
            number(0, 1, "in diameters"),
            "radius that rounds the cutting edges, in diameters",
            SectionShape::edgeRounding);
    private static final Field<SectionShape, Double> LAND_WIDTH = standing(
            "landWidth",
            0.0,
            number(0, 1, "in diameters"),
            "width of a margin ground on each cutting edge, in diameters",
            SectionShape::landWidth);
    private static final Field<SectionShape, List<Point>> POINTS = standing(
            "points",
            List.of(),
            list(POINT, 0, 20_000),
            "the outline of a custom section, anticlockwise",
            SectionShape::points);

    static final RecordForm<SectionShape> SHAPE = new RecordForm<>(
            "section",
            "A section: a family with its parameters, or a custom outline.",
            false,
            List.of(FAMILY, PARAMETERS, EDGE_ROUNDING, LAND_WIDTH, POINTS),
            values -> new SectionShape(
                    values.of(FAMILY),
                    values.of(PARAMETERS),
                    values.of(EDGE_ROUNDING),
                    values.of(LAND_WIDTH),
                    values.of(POINTS)));

    private SectionForms() {}
}
