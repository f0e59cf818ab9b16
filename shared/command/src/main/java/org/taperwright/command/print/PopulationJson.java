package org.taperwright.command.print;

import java.util.TreeMap;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.shaping.canal.preset.CanalPreset;
import org.taperwright.shaping.population.Distribution;
import org.taperwright.shaping.population.PopulationShaping;
import org.taperwright.shaping.population.WorstCase;

/** A sequence over a population of canals, as JSON for programs: form {@code taperwright/population}. */
public final class PopulationJson {
    private PopulationJson() {}

    /** The distributions and the worst cases. */
    public static String of(String sequence, CanalPreset preset, int seed, PopulationShaping population) {
        ResultJson json = new ResultJson("taperwright/population", 1);
        JsonWriter out = json.out();
        out.name("sequence").text(sequence);
        out.name("preset").text(preset.id());
        out.name("source").text(preset.source());
        out.name("canals").number(population.canals());
        out.name("seed").number(seed);
        out.name("notMade").beginList(population.notMade().isEmpty());
        new TreeMap<>(population.notMade())
                .forEach((place, canals) -> out.beginObject(true)
                        .name("step")
                        .number(place + 1)
                        .name("canals")
                        .number(canals)
                        .endObject());
        out.endList();
        out.name("distributions").beginList(population.distributions().isEmpty());
        for (Distribution found : population.distributions()) {
            out.beginObject(false);
            found.quantity().step().ifPresent(place -> out.name("step").number(place + 1));
            out.name("name").text(found.quantity().name());
            out.name("unit").text(found.quantity().unit());
            out.name("standing").text(found.quantity().standing().word());
            out.name("canals").number(found.canals());
            out.name("low").number(found.low());
            out.name("median").number(found.median());
            out.name("high").number(found.high());
            out.endObject();
        }
        out.endList();
        out.name("worst").beginList(population.worst().isEmpty());
        for (WorstCase worst : population.worst()) {
            out.beginObject(false);
            worst.quantity().step().ifPresent(place -> out.name("step").number(place + 1));
            out.name("name").text(worst.quantity().name());
            out.name("unit").text(worst.quantity().unit());
            out.name("standing").text(worst.quantity().standing().word());
            out.name("value").number(worst.value());
            out.name("canal").text(worst.canal().name());
            out.name("workingLengthMm").number(worst.canal().workingLengthMm());
            out.endObject();
        }
        out.endList();
        return json.finished();
    }
}
