package org.taperwright.library.exchange;

import static org.taperwright.library.exchange.form.Field.optional;
import static org.taperwright.library.exchange.form.Field.required;
import static org.taperwright.library.exchange.form.Field.standing;
import static org.taperwright.library.exchange.form.Forms.identifier;
import static org.taperwright.library.exchange.form.Forms.list;
import static org.taperwright.library.exchange.form.Forms.name;
import static org.taperwright.library.exchange.form.Forms.note;
import static org.taperwright.library.exchange.form.Forms.number;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.taperwright.library.exchange.form.Field;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.mechanics.measured.FitAccount;
import org.taperwright.mechanics.measured.OwnAlloy;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;

/** The form of a library's own alloy. */
final class AlloyForm {
    private static final int MOST_CONSTANTS = 50;
    private static final double MOST = 1e9;

    /** A constant as it stands in the form. */
    private record Constant(String name, double value, Optional<Double> low, Optional<Double> high) {
        static Constant of(Map.Entry<String, Reading> known) {
            Optional<Band> band = known.getValue().band();
            return new Constant(known.getKey(), known.getValue().value(), band.map(Band::low), band.map(Band::high));
        }

        Reading reading() {
            if (low.isPresent() != high.isPresent() || low.isPresent() && low.get() > high.get()) {
                throw new IllegalArgumentException("gives " + name + " a band that is none; expected low <= high");
            }
            return new Reading(value, low.map(from -> new Band(from, high.orElseThrow())));
        }
    }

    private static final Field<Constant, String> CONSTANT =
            required("name", identifier(), "key of the constant, such as youngMpa", Constant::name);
    private static final Field<Constant, Double> VALUE =
            required("value", number(-MOST, MOST, ""), "its value, in the unit of its key", Constant::value);
    private static final Field<Constant, Optional<Double>> LOW =
            optional("low", number(-MOST, MOST, ""), "lower end of its 5 to 95 % band", Constant::low);
    private static final Field<Constant, Optional<Double>> HIGH =
            optional("high", number(-MOST, MOST, ""), "upper end of its 5 to 95 % band", Constant::high);
    private static final RecordForm<Constant> CONSTANT_FORM = new RecordForm<>(
            "alloyConstant",
            "A constant of an alloy, with its band unless it is known.",
            true,
            List.of(CONSTANT, VALUE, LOW, HIGH),
            values -> new Constant(values.of(CONSTANT), values.of(VALUE), values.of(LOW), values.of(HIGH)));

    private static final Field<OwnAlloy, String> NAME = required("name", name(), "what people call it", OwnAlloy::name);
    private static final Field<OwnAlloy, String> KIN = required(
            "kin",
            identifier(),
            "identifier of the alloy of the program whose kind it is and whose laws it follows",
            OwnAlloy::kin);
    private static final Field<OwnAlloy, Double> POISSON =
            required("poisson", number(0, 0.499, ""), "Poisson's ratio", OwnAlloy::poisson);
    private static final Field<OwnAlloy, Double> ULTIMATE =
            required("ultimateMpa", number(1, 100_000, "MPa"), "tensile strength, MPa", OwnAlloy::ultimateMpa);
    private static final Field<OwnAlloy, List<Constant>> CONSTANTS = required(
            "constants",
            list(CONSTANT_FORM, 2, MOST_CONSTANTS),
            "youngMpa, yieldMpa, those of its kin's stress law, and constants of the strain-life law that are its own",
            alloy -> alloy.constants().entrySet().stream().map(Constant::of).toList());
    private static final Field<OwnAlloy, Optional<FitAccount>> FIT =
            optional("fit", FitAccountForm.FORM, "how its constants were found, if by a fit", OwnAlloy::fit);
    private static final Field<OwnAlloy, String> SOURCE =
            required("source", note(), "where the numbers come from and how they are known", OwnAlloy::source);
    private static final Field<OwnAlloy, String> VALIDITY =
            required("validity", note(), "where they hold", OwnAlloy::validity);
    private static final Field<OwnAlloy, String> NOTE = standing("note", "", note(), "free text", OwnAlloy::note);

    static final RecordForm<OwnAlloy> FORM = new RecordForm<>(
            "alloy",
            "An alloy of a library's own, which designs name by its identifier.",
            false,
            List.of(NAME, KIN, POISSON, ULTIMATE, CONSTANTS, FIT, SOURCE, VALIDITY, NOTE),
            values -> new OwnAlloy(
                    values.of(NAME),
                    values.of(KIN),
                    values.of(POISSON),
                    values.of(ULTIMATE),
                    byName(values.of(CONSTANTS)),
                    values.of(FIT),
                    values.of(SOURCE),
                    values.of(VALIDITY),
                    values.of(NOTE)));

    private AlloyForm() {}

    private static Map<String, Reading> byName(List<Constant> constants) {
        Map<String, Reading> byName = new TreeMap<>();
        for (Constant each : constants) {
            if (byName.put(each.name(), each.reading()) != null) {
                throw new IllegalArgumentException("gives " + each.name() + " twice");
            }
        }
        return byName;
    }
}
