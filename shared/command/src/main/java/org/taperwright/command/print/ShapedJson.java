package org.taperwright.command.print;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.passage.Third;
import org.taperwright.shaping.passage.remark.ShapedRules;
import org.taperwright.shaping.passage.stroke.CanalOutcome;
import org.taperwright.shaping.passage.stroke.ShapedSequence;
import org.taperwright.shaping.passage.stroke.StepOutcome;
import org.taperwright.shaping.passage.stroke.Transportation;
import org.taperwright.shaping.sequence.ArrangedSequence;

/** What a sequence does stroke by stroke, as an object of a result: outputs grouped by their standing. */
final class ShapedJson {
    private final JsonWriter out;

    private final Banded banded;

    ShapedJson(JsonWriter out, Banded banded) {
        this.out = out;
        this.banded = banded;
    }

    void write(ArrangedSequence arranged, ShapedSequence shaped) {
        out.name("strokeByStroke").beginObject(false);
        out.name("faults").beginList(shaped.faults().isEmpty());
        for (Fault fault : shaped.faults()) {
            out.text(fault.sentence());
        }
        out.endList();
        List<Fault> remarks = banded.shown() ? ShapedRules.check(arranged, shaped) : List.of();
        out.name("remarks").beginList(remarks.isEmpty());
        remarks.forEach(fault -> out.text(fault.sentence()));
        out.endList();
        out.name("steps").beginList(shaped.steps().isEmpty());
        shaped.byPlace().forEach(this::step);
        out.endList();
        shaped.canal().ifPresent(this::canal);
        out.endObject();
    }

    private void step(int place, StepOutcome step) {
        out.beginObject(false);
        out.name("step").number(place + 1);
        out.name("settled").flag(step.settled());
        begin(Standing.COMPUTED);
        out.name("bindDepthMm").number(step.bindDepthMm());
        out.name("engagedFirstMm").number(step.engagedFirstMm());
        thirds("removedMm3", step.removedMm3());
        out.name("greatestStrain").number(step.greatestStrain());
        out.name("strainLevelMm").number(step.strainLevelMm());
        out.name("tipForceN").number(step.tipForceN());
        out.name("tipOffsetMm").number(step.tipOffsetMm());
        out.endObject();
        if (banded.shown()) {
            Optional<Integer> at = Optional.of(place);
            begin(Standing.ESTIMATE);
            banded.write(out, at, "roomFilled", "roomFilled", step.roomFilled());
            out.endObject();
            begin(Standing.INDEX);
            banded.write(out, at, "torqueNmm", "torqueNmm", step.torque().totalNmm());
            banded.write(out, at, "torsionalReserve", "torsionalReserve", step.reserve());
            banded.write(out, at, "lifeSpent", "lifeSpent", step.damage());
            banded.write(out, at, "lifeLevelMm", "lifeLevelMm", step.damageLevelMm());
            out.endObject();
        }
        out.endObject();
    }

    private void canal(CanalOutcome canal) {
        out.name("canal").beginObject(false);
        begin(Standing.COMPUTED);
        thirds("beforeMm3", canal.beforeMm3());
        thirds("afterMm3", canal.afterMm3());
        out.endObject();
        if (banded.shown()) {
            unsure(canal);
        }
        out.endObject();
    }

    private void unsure(CanalOutcome canal) {
        Optional<Integer> whole = Optional.empty();
        begin(Standing.ESTIMATE);
        banded.write(out, whole, "touchedShare", "touchedShare", canal.touchedShare());
        canal.leastDentine().ifPresent(least -> {
            banded.write(out, whole, "leastDentineMm", "leastDentineMm", least.thicknessMm());
            out.name("leastDentineDepthMm").number(least.depthMm());
            out.name("leastDentineAzimuthDeg").number(least.azimuthDeg());
        });
        out.endObject();
        begin(Standing.INDEX);
        out.name("transportation").beginList(canal.transportation().isEmpty());
        for (Transportation moved : canal.transportation()) {
            int from = (int) moved.fromEndMm();
            out.beginObject(false).name("fromEndMm").number(moved.fromEndMm());
            banded.write(out, whole, "transportedMm." + from, "transportedMm", moved.transportedMm());
            moved.centring()
                    .ifPresent(ratio -> banded.write(out, whole, "centringRatio." + from, "centringRatio", ratio));
            out.endObject();
        }
        out.endList();
        out.endObject();
    }

    private void begin(Standing standing) {
        out.name(standing.word()).beginObject(false);
    }

    private void thirds(String name, Map<Third, Double> values) {
        out.name(name).beginObject(true);
        for (Third third : Third.values()) {
            out.name(third.word()).number(values.get(third));
        }
        out.endObject();
    }
}
