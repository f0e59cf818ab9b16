package org.taperwright.command.print;

import java.util.List;
import java.util.Optional;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.work.Fault;

/** What the results of all verbs have in common as JSON: the head, quantities with unit and standing, remarks. */
final class ResultJson {
    private final JsonWriter out = new JsonWriter();

    /** Begins a result of a form, such as {@code taperwright/assessment}. */
    ResultJson(String form) {
        out.beginObject(false);
        out.name("form").text(form).name("version").number(1);
        out.name("program").text(Release.number());
        out.name("caution").text(Page.caution());
    }

    JsonWriter out() {
        return out;
    }

    /** A named value with its unit, its standing and, where it has one, its band. */
    void quantity(String name, double value, String unit, Standing standing, Optional<Band> band) {
        out.name(name).beginObject(true).name("value").number(value);
        if (!unit.isEmpty()) {
            out.name("unit").text(unit);
        }
        out.name("standing").text(standing.word());
        band.ifPresent(b -> out.name("band")
                .beginList(true)
                .number(b.low())
                .number(b.high())
                .endList());
        out.endObject();
    }

    /** A named computed value. */
    void computed(String name, double value, String unit) {
        quantity(name, value, unit, Standing.COMPUTED, Optional.empty());
    }

    void remarks(List<Fault> remarks) {
        out.name("remarks").beginList(remarks.isEmpty());
        for (Fault fault : remarks) {
            out.beginObject(false);
            out.name("weight").text(fault.weight() == Fault.Weight.IMPOSSIBLE ? "impossible" : "unusual");
            out.name("where").text(fault.where());
            out.name("what").text(fault.what());
            out.name("expected").text(fault.expected());
            out.endObject();
        }
        out.endList();
    }

    String finished() {
        out.endObject();
        return out.finished();
    }
}
