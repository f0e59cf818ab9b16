package org.taperwright.library.exchange;

import static org.taperwright.library.exchange.form.Field.required;
import static org.taperwright.library.exchange.form.Forms.number;

import java.util.List;
import org.taperwright.library.exchange.form.Field;
import org.taperwright.library.exchange.form.Form;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.shaping.instrument.Reciprocation;
import org.taperwright.shaping.instrument.Window;

/** The forms of ranges, both ends included. */
final class WindowForms {
    static final Form<Double> RPM = number(0, 1_000_000, "rev/min");
    static final Form<Double> TORQUE = number(0, 100_000, "N mm");

    static final RecordForm<Window> SPEED = range("speedRange", "A range of speeds, rev/min.", RPM);
    static final RecordForm<Window> TORQUES = range("torqueRange", "A range of torques, N mm.", TORQUE);
    static final RecordForm<Window> ANGLES =
            range("angleRange", "A range of angles, degrees.", number(0, 3600, "degrees"));

    private static final Field<Reciprocation, Window> CUTTING =
            required("cuttingDeg", ANGLES, "angles of the cutting turn, degrees", Reciprocation::cuttingDeg);
    private static final Field<Reciprocation, Window> RELEASING =
            required("releasingDeg", ANGLES, "angles of the releasing turn, degrees", Reciprocation::releasingDeg);
    static final RecordForm<Reciprocation> RECIPROCATION = new RecordForm<>(
            "reciprocation",
            "Angles of a reciprocating motion.",
            false,
            List.of(CUTTING, RELEASING),
            values -> new Reciprocation(values.of(CUTTING), values.of(RELEASING)));

    private WindowForms() {}

    private static RecordForm<Window> range(String name, String explanation, Form<Double> number) {
        Field<Window, Double> least = required("least", number, "the smallest value, included", Window::least);
        Field<Window, Double> most = required("most", number, "the greatest value, included", Window::most);
        return new RecordForm<>(
                name, explanation, true, List.of(least, most), values -> ordered(values.of(least), values.of(most)));
    }

    private static Window ordered(double least, double most) {
        if (least > most) {
            throw new IllegalArgumentException("has its least above its most");
        }
        return new Window(least, most);
    }
}
