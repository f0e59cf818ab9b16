package org.taperwright.command.print;

import java.util.List;
import java.util.Optional;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.bench.StandardLimit;
import org.taperwright.mechanics.bench.spread.BendingSpread;
import org.taperwright.mechanics.bench.spread.CurveBand;
import org.taperwright.mechanics.bench.spread.TwistingSpread;
import org.taperwright.mechanics.fatigue.FatigueResult;
import org.taperwright.mechanics.quantity.Reading;

/** The bench tests of a design with the limits of the standard, and turning in the usual tube. */
final class BenchJson {
    private BenchJson() {}

    static void write(Assessment assessment, ResultJson json) {
        bending(assessment, json);
        twisting(assessment, json);
        fatigue(assessment, json);
    }

    private static void bending(Assessment assessment, ResultJson json) {
        BendingSpread spread = assessment.bendingSpread();
        JsonWriter out = json.out();
        out.name("bending").beginObject(false);
        json.estimate("moment45", spread.momentNmm().reading(), "N·mm", JsonSource.BENDING);
        json.estimate("force45", spread.forceN().reading(), "N", JsonSource.BENDING);
        json.estimate("endSlope45", spread.endSlopeDeg().reading(), "°", JsonSource.BENDING);
        json.estimate(
                "greatestStrain45",
                spread.greatestStrain().map(strain -> 100 * strain).reading(),
                "%",
                JsonSource.BENDING);
        json.estimate("greatestStrainLevel", spread.strainLevelMm().reading(), "mm", JsonSource.BENDING);
        out.name("springsBack").flag(assessment.alloy().springsBack());
        json.estimate("set45", spread.setDeg().reading(), "°", JsonSource.BENDING);
        curve("moment", spread.curve(), JsonSource.BENDING, json);
        limit(assessment.bending().limit(), out);
        out.endObject();
    }

    private static void twisting(Assessment assessment, ResultJson json) {
        TwistingSpread spread = assessment.twistingSpread();
        JsonWriter out = json.out();
        out.name("twisting").beginObject(false);
        json.computed("twistPerTorque", assessment.twisting().twistRadPerNmm(), "rad/(N·mm)", JsonSource.STIFFNESS);
        json.estimate("torqueAtFirstYield", spread.yieldTorqueNmm().reading(), "N·mm", JsonSource.PLASTIC);
        json.estimate("plasticTorque", spread.plasticTorqueNmm().reading(), "N·mm", JsonSource.PLASTIC);
        json.estimate("torqueAtFracture", spread.fractureTorqueNmm().reading(), "N·mm", JsonSource.TWISTING);
        json.estimate("angleAtFracture", spread.fractureAngleDeg().reading(), "°", JsonSource.TWISTING);
        json.estimate("weakestLevel", spread.weakestLevelMm().reading(), "mm", JsonSource.TWISTING);
        curve("torque", spread.curve(), JsonSource.TWISTING, json);
        limit(assessment.twisting().limit(), out);
        out.endObject();
    }

    private static void curve(String name, List<CurveBand> curve, JsonSource source, ResultJson json) {
        JsonWriter out = json.out();
        out.name("curve").beginList(false);
        for (CurveBand point : curve) {
            out.beginObject(true).name("atAngleDeg").number(point.angleDeg());
            json.estimate(name, new Reading(point.momentNmm(), Optional.of(point.band())), "N·mm", source);
            out.endObject();
        }
        out.endList();
    }

    private static void fatigue(Assessment assessment, ResultJson json) {
        FatigueResult fatigue = assessment.fatigue();
        JsonSource source = new JsonSource("fatigue-" + assessment.alloy().id(), fatigue.source());
        JsonWriter out = json.out();
        out.name("fatigue").beginObject(false);
        out.name("inTube").beginObject(true);
        out.name("angleDeg").number(fatigue.tube().angleDeg());
        out.name("radiusMm").number(fatigue.tube().radiusMm());
        out.name("middleMm").number(fatigue.tube().middleMm());
        out.name("speedRpm").number(fatigue.speedRpm());
        out.endObject();
        json.computed("strain", 100 * fatigue.strain(), "%", JsonSource.DESIGN);
        json.computed("level", fatigue.levelMm(), "mm", JsonSource.DESIGN);
        json.estimate("cycles", new Reading(fatigue.cycles(), Optional.of(fatigue.band())), "1", source);
        json.estimate("time", new Reading(fatigue.seconds(), Optional.of(fatigue.secondsBand())), "s", source);
        out.name("unbroken").flag(fatigue.unbroken());
        out.name("extrapolated").flag(fatigue.extrapolated());
        out.endObject();
    }

    private static void limit(Optional<StandardLimit> limit, JsonWriter out) {
        limit.ifPresent(l -> out.name("limit")
                .beginObject(false)
                .name(l.upper() ? "atMostNmm" : "atLeastNmm")
                .number(l.valueNmm())
                .name("source")
                .text(l.source())
                .endObject());
    }
}
