package org.taperwright.command.print;

import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.mechanics.uncertainty.LatinHypercube;
import org.taperwright.shaping.passage.spread.BandedQuantity;
import org.taperwright.shaping.passage.spread.ShapingBands;
import org.taperwright.shaping.passage.spread.UncertainInput;

/** The bands of a sequence, as an object of a result, with all correlations. */
final class BandsJson {
    private final JsonWriter out;

    BandsJson(JsonWriter out) {
        this.out = out;
    }

    void write(ShapingBands bands) {
        out.name("bands").beginObject(false);
        out.name("samples").number(bands.samples());
        out.name("seed").number(LatinHypercube.SEED);
        out.name("inputs").beginList(bands.inputs().isEmpty());
        for (UncertainInput input : bands.inputs()) {
            out.beginObject(false);
            out.name("name").text(input.name());
            out.name("label").text(input.label());
            out.name("unit").text(input.unit());
            out.name("low").number(input.low());
            out.name("high").number(input.high());
            out.name("source").text(input.source());
            out.endObject();
        }
        out.endList();
        out.name("quantities").beginList(bands.quantities().isEmpty());
        bands.quantities().forEach(this::quantity);
        out.endList();
        out.endObject();
    }

    private void quantity(BandedQuantity banded) {
        out.beginObject(false);
        banded.quantity().step().ifPresent(place -> out.name("step").number(place + 1));
        out.name("name").text(banded.quantity().name());
        out.name("unit").text(banded.quantity().unit());
        out.name("standing").text(banded.quantity().standing().word());
        out.name("value").number(banded.value());
        banded.band().ifPresent(band -> {
            out.name("low").number(band.low());
            out.name("high").number(band.high());
        });
        banded.strongest()
                .ifPresent(found -> out.name("strongest").text(found.input().name()));
        out.name("rankCorrelation").beginObject(false);
        for (BandedQuantity.Correlation correlation : banded.correlations()) {
            out.name(correlation.input().name()).number(correlation.rank());
        }
        out.endObject();
        out.endObject();
    }
}
