package org.taperwright.command.print;

import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.shaping.finish.Finish;
import org.taperwright.shaping.finish.NeedleReach;
import org.taperwright.shaping.instrument.Designation;
import org.taperwright.shaping.passage.GeometricPassage;
import org.taperwright.shaping.passage.ShapingLimits;
import org.taperwright.shaping.passage.StepGeometry;
import org.taperwright.shaping.passage.Third;
import org.taperwright.shaping.passage.spread.ShapingBands;
import org.taperwright.shaping.passage.stroke.ShapedSequence;
import org.taperwright.shaping.sequence.ArrangedSequence;

/** What each step does, by geometry and stroke by stroke, as JSON for programs: form {@code taperwright/passage}. */
public final class PassageJson {
    private PassageJson() {}

    /** Steps in order. */
    public static String of(
            ArrangedSequence arranged,
            GeometricPassage passage,
            ShapedSequence shaped,
            SortedMap<Integer, NeedleReach> needles,
            Finish finish,
            Optional<ShapingBands> bands,
            Optional<CarriedKit> kit) {
        ResultJson json = new ResultJson("taperwright/passage", 2);
        JsonWriter out = json.out();
        out.name("sequence").text(arranged.sequence().name());
        out.name("canal").text(arranged.canal().name());
        out.name("canalSource").text(arranged.canal().source());
        arranged.motor().ifPresent(motor -> out.name("motor").text(motor.name()));
        out.name("standing").text(Standing.COMPUTED.word());
        json.remarks(passage.remarks());
        out.name("steps").beginList(false);
        for (int i = 0; i < passage.steps().size(); i++) {
            out.beginObject(false);
            out.name("kind").text(arranged.step(i).word());
            arranged.step(i).uses().ifPresent(id -> out.name("instrument").text(id.value()));
            arranged.instruments()
                    .get(i)
                    .ifPresent(used ->
                            out.name("designation").text(Designation.of(used).text()));
            out.name("depthMm").number(arranged.depthMm(i));
            passage.steps().get(i).ifPresent(step -> geometry(step, out));
            NeedleReach reach = needles.get(i);
            if (reach != null) {
                FinishJson.needle(reach, out.name("needleReach"), new Banded(bands));
            }
            out.endObject();
        }
        out.endList();
        Banded banded = new Banded(bands);
        new ShapedJson(out, banded).write(arranged, shaped);
        kit.ifPresent(carried -> {
            out.name("kit").text(carried.name());
            new PiecesJson(out).write(carried.life());
        });
        new FinishJson(out, banded).write(finish);
        bands.ifPresent(new BandsJson(out)::write);
        out.name("leftOut").beginList(false);
        ShapingLimits.LEFT_OUT.forEach(limit -> out.text(limit.what() + ": " + limit.size()));
        out.endList();
        return json.finished();
    }

    private static void geometry(StepGeometry step, JsonWriter out) {
        out.name("engagedMm").beginList(step.engaged().isEmpty());
        for (StepGeometry.Stretch stretch : step.engaged()) {
            out.beginObject(true).name("from").number(stretch.fromMm());
            out.name("to").number(stretch.toMm()).endObject();
        }
        out.endList();
        out.name("greatestExcessMm").number(step.greatestExcessMm());
        thirds("enlargedMm3", step.enlargedMm3(), out);
        thirds("engagedShare", step.engagedShare(), out);
    }

    private static void thirds(String name, Map<Third, Double> values, JsonWriter out) {
        out.name(name).beginObject(true);
        for (Third third : Third.values()) {
            out.name(third.word()).number(values.get(third));
        }
        out.endObject();
    }
}
