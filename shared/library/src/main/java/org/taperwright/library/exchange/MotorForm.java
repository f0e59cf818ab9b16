package org.taperwright.library.exchange;

import static org.taperwright.library.exchange.form.Field.optional;
import static org.taperwright.library.exchange.form.Field.required;
import static org.taperwright.library.exchange.form.Field.standing;
import static org.taperwright.library.exchange.form.Forms.flag;
import static org.taperwright.library.exchange.form.Forms.line;
import static org.taperwright.library.exchange.form.Forms.name;
import static org.taperwright.library.exchange.form.Forms.note;

import java.util.List;
import java.util.Optional;
import org.taperwright.library.exchange.form.Field;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.instrument.Reciprocation;
import org.taperwright.shaping.instrument.Window;

/** The form of a motor. */
final class MotorForm {
    private static final Field<Motor, String> NAME = required("name", name(), "what people call it", Motor::name);
    private static final Field<Motor, String> MAKER = standing("maker", "", line(), "who makes it", Motor::maker);
    private static final Field<Motor, Window> SPEED =
            required("speedRpm", WindowForms.SPEED, "speeds it can be set to, rev/min", Motor::speedRpm);
    private static final Field<Motor, Window> TORQUE =
            required("torqueNmm", WindowForms.TORQUES, "torque limits it can be set to, N mm", Motor::torqueNmm);
    private static final Field<Motor, Optional<Reciprocation>> RECIPROCATION = optional(
            "reciprocation",
            WindowForms.RECIPROCATION,
            "the angles it can be set to; left out when it does not reciprocate",
            Motor::reciprocation);
    private static final Field<Motor, Boolean> CORDLESS =
            standing("cordless", false, flag(), "whether it runs from a battery", Motor::cordless);
    private static final Field<Motor, Boolean> LOCATOR =
            standing("apexLocator", false, flag(), "whether an apex locator is linked", Motor::apexLocator);
    private static final Field<Motor, String> NOTE = standing("note", "", note(), "free text", Motor::note);

    static final RecordForm<Motor> FORM = new RecordForm<>(
            "motor",
            "A motor.",
            false,
            List.of(NAME, MAKER, SPEED, TORQUE, RECIPROCATION, CORDLESS, LOCATOR, NOTE),
            values -> new Motor(
                    values.of(NAME),
                    values.of(MAKER),
                    values.of(SPEED),
                    values.of(TORQUE),
                    values.of(RECIPROCATION),
                    values.of(CORDLESS),
                    values.of(LOCATOR),
                    values.of(NOTE)));

    private MotorForm() {}
}
