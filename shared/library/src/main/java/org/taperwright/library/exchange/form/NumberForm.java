package org.taperwright.library.exchange.form;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.taperwright.library.exchange.json.JsonTokens;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.library.exchange.json.Node;

/**
 * A finite number within limits, both included. The limits only keep out what cannot be meant; whether a number makes
 * sense where it stands is for the checks of the thing.
 *
 * @param least smallest allowed
 * @param most greatest allowed
 * @param unit unit for people, such as "mm"; empty for plain numbers
 */
record NumberForm(double least, double most, String unit) implements Form<Double> {
    @Override
    public Optional<Double> read(Node node, String path, Findings findings) {
        if (!(node instanceof Node.NumberNode number) || Double.isNaN(number.value())) {
            findings.refuse(node, path, expected());
            return Optional.empty();
        }
        if (!fits(number.value())) {
            findings.refuse(node, path, expected() + ", from " + shown(least) + " to " + shown(most));
            return Optional.empty();
        }
        return Optional.of(number.value());
    }

    @Override
    public Optional<Double> straight(JsonTokens in) {
        double number = in.number();
        return fits(number) ? Optional.of(number) : Optional.empty();
    }

    private boolean fits(double number) {
        return number >= least && number <= most;
    }

    private String expected() {
        return unit.isEmpty() ? "expected a number" : "expected a number, " + unit;
    }

    static String shown(double limit) {
        return limit == Math.rint(limit) ? String.valueOf((long) limit) : String.valueOf(limit);
    }

    @Override
    public void write(Double value, JsonWriter out) {
        out.number(value);
    }

    @Override
    public Map<String, Object> schema(Definitions definitions) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "number");
        schema.put("minimum", least);
        schema.put("maximum", most);
        return schema;
    }
}
