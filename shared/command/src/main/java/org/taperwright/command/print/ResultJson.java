package org.taperwright.command.print;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.uncertainty.LatinHypercube;
import org.taperwright.mechanics.work.Fault;

/**
 * What the results of all verbs have in common as JSON: the head; quantities with unit, standing, band and the key of their
 * source; remarks; the sources by key at the end.
 */
final class ResultJson {
    private final JsonWriter out = new JsonWriter();
    private final Map<String, String> sources = new TreeMap<>();

    /** Begins a result of a form, such as {@code taperwright/assessments}. */
    ResultJson(String form, int version) {
        out.beginObject(false);
        out.name("form").text(form).name("version").number(version);
        out.name("program").text(Release.number());
        out.name("caution").text(Page.caution());
    }

    JsonWriter out() {
        return out;
    }

    /** How bands were found. */
    void bands() {
        out.name("bands").beginObject(true);
        out.name("lowPercent").number(5);
        out.name("highPercent").number(95);
        out.name("samples").number(LatinHypercube.SAMPLES);
        out.name("seed").number(LatinHypercube.SEED);
        out.endObject();
    }

    /** A named value with its unit, 1 for a plain number, its standing, its band where it has one, and its source. */
    void quantity(String name, Reading reading, String unit, Standing standing, JsonSource source) {
        out.name(name).beginObject(true).name("value").number(reading.value());
        band("band", reading.band());
        out.name("unit").text(unit.isEmpty() ? "1" : unit);
        out.name("standing").text(standing.word());
        out.name("source").text(source(source));
        out.endObject();
    }

    /** Keeps a source for the end of the result; gives its key. */
    String source(JsonSource source) {
        sources.put(source.key(), source.text());
        return source.key();
    }

    /** A named computed value. */
    void computed(String name, double value, String unit, JsonSource source) {
        quantity(name, Reading.of(value), unit, Standing.COMPUTED, source);
    }

    /** A named estimate. */
    void estimate(String name, Reading reading, String unit, JsonSource source) {
        quantity(name, reading, unit, Standing.ESTIMATE, source);
    }

    /** A band as a pair, where there is one. */
    void band(String name, Optional<Band> band) {
        band.ifPresent(b ->
                out.name(name).beginList(true).number(b.low()).number(b.high()).endList());
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
        if (!sources.isEmpty()) {
            out.name("sources").beginObject(false);
            sources.forEach((key, text) -> out.name(key).text(text));
            out.endObject();
        }
        out.endObject();
        return out.finished();
    }
}
