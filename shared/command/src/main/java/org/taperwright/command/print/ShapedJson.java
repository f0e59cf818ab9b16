package org.taperwright.command.print;

import java.util.Map;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.passage.Third;
import org.taperwright.shaping.passage.stroke.CanalOutcome;
import org.taperwright.shaping.passage.stroke.ShapedSequence;
import org.taperwright.shaping.passage.stroke.StepOutcome;
import org.taperwright.shaping.passage.stroke.Transportation;

/** What a sequence does stroke by stroke, as an object of a result: outputs grouped by their standing. */
final class ShapedJson {
    private final JsonWriter out;

    ShapedJson(JsonWriter out) {
        this.out = out;
    }

    void write(ShapedSequence shaped) {
        out.name("strokeByStroke").beginObject(false);
        out.name("faults").beginList(shaped.faults().isEmpty());
        for (Fault fault : shaped.faults()) {
            out.text(fault.sentence());
        }
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
        begin(Standing.ESTIMATE);
        out.name("roomFilled").number(step.roomFilled());
        out.endObject();
        begin(Standing.INDEX);
        out.name("torqueNmm").number(step.torque().totalNmm());
        if (!Double.isInfinite(step.reserve())) {
            out.name("torsionalReserve").number(step.reserve());
        }
        out.name("lifeSpent").number(step.damage());
        out.name("lifeLevelMm").number(step.damageLevelMm());
        out.endObject();
        out.endObject();
    }

    private void canal(CanalOutcome canal) {
        out.name("canal").beginObject(false);
        begin(Standing.COMPUTED);
        thirds("beforeMm3", canal.beforeMm3());
        thirds("afterMm3", canal.afterMm3());
        out.endObject();
        begin(Standing.ESTIMATE);
        out.name("touchedShare").number(canal.touchedShare());
        canal.leastDentine().ifPresent(least -> {
            out.name("leastDentineMm").number(least.thicknessMm());
            out.name("leastDentineDepthMm").number(least.depthMm());
            out.name("leastDentineAzimuthDeg").number(least.azimuthDeg());
        });
        out.endObject();
        begin(Standing.INDEX);
        out.name("transportation").beginList(canal.transportation().isEmpty());
        for (Transportation moved : canal.transportation()) {
            out.beginObject(true).name("fromEndMm").number(moved.fromEndMm());
            out.name("transportedMm").number(moved.transportedMm());
            moved.centring().ifPresent(ratio -> out.name("centringRatio").number(ratio));
            out.endObject();
        }
        out.endList();
        out.endObject();
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
