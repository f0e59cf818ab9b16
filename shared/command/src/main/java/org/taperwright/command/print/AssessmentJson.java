package org.taperwright.command.print;

import java.util.List;
import java.util.Optional;
import org.taperwright.command.input.FoundDesign;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.mechanics.assessment.AssessedSection;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.bench.StandardLimit;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.Metrics;
import org.taperwright.mechanics.fatigue.FatigueResult;
import org.taperwright.mechanics.properties.ProfilePoint;
import org.taperwright.mechanics.properties.SectionProperties;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.section.Edge;
import org.taperwright.mechanics.uncertainty.LatinHypercube;

/** Assessments as JSON for programs: form {@code taperwright/assessments}. */
public final class AssessmentJson {
    private AssessmentJson() {}

    /** The designs in the order asked for. */
    public static String of(List<FoundDesign> found, List<Assessment> assessments) {
        ResultJson json = new ResultJson("taperwright/assessments");
        JsonWriter out = json.out();
        out.name("assessments").beginList(false);
        for (int i = 0; i < assessments.size(); i++) {
            Assessment assessment = assessments.get(i);
            out.beginObject(false);
            out.name("id").text(found.get(i).id().value());
            out.name("name").text(assessment.design().name());
            out.name("source").text(found.get(i).origin().source());
            out.name("alloy").text(assessment.alloy().id());
            json.remarks(assessment.remarks());
            out.name("sections").beginList(false);
            assessment.stations().forEach(station -> section(station, json));
            out.endList();
            out.name("blade").beginList(false);
            assessment.profile().points().forEach(point -> point(point, out));
            out.endList();
            bench(assessment, json);
            fatigue(assessment.fatigue(), out);
            metrics(assessment, json);
            out.endObject();
        }
        out.endList();
        return json.finished();
    }

    private static void section(AssessedSection station, ResultJson json) {
        JsonWriter out = json.out();
        SectionProperties p = station.properties();
        out.beginObject(false);
        out.name("levelMm").number(station.levelMm());
        out.name("standing").text(Standing.COMPUTED.word());
        out.name("area").number(p.area());
        out.name("iGreatest").number(p.iMax());
        out.name("iLeast").number(p.iMin());
        out.name("polar").number(p.polar());
        out.name("torsionConstant").number(p.torsionConstant());
        out.name("peakShear").number(p.peakShear());
        out.name("peakShearSingular").flag(p.peakShearSingular());
        out.name("plasticTorque").number(p.plasticTorque());
        out.name("plasticMomentLeast").number(p.plasticMomentLeast());
        out.name("plasticMomentMost").number(p.plasticMomentMost());
        out.name("core").number(p.core());
        out.name("inscribed").number(p.inscribed());
        out.name("chipSpace").number(p.chipSpace());
        out.name("edges").beginList(false);
        for (Edge edge : station.edges()) {
            out.beginObject(true);
            out.name("angleDeg").number(Math.toDegrees(edge.angle()));
            out.name("rakeDeg").number(edge.rakeDeg());
            out.name("wedgeDeg").number(edge.wedgeDeg());
            out.name("clearanceDeg").number(edge.clearanceDeg());
            out.name("landWidth").number(edge.landWidth());
            out.endObject();
        }
        out.endList();
        out.endObject();
    }

    private static void point(ProfilePoint p, JsonWriter out) {
        out.beginObject(false);
        out.name("levelMm").number(p.levelMm());
        out.name("standing").text(Standing.COMPUTED.word());
        out.name("diameterMm").number(p.diameterMm());
        out.name("areaMm2").number(p.areaMm2());
        out.name("bendingStiffnessNmm2").number(p.bendingStiffnessNmm2());
        out.name("torsionalStiffnessNmm2").number(p.torsionalStiffnessNmm2());
        out.name("plasticTorqueNmm").number(p.plasticTorqueNmm());
        out.name("coreMm").number(p.coreMm());
        out.name("chipSpaceMm2").number(p.chipSpaceMm2());
        out.name("helixAngleDeg").number(p.helixAngleDeg());
        out.endObject();
    }

    /** Every metric's value, as a comparison has it. */
    private static void metrics(Assessment assessment, ResultJson json) {
        json.out().name("metrics").beginObject(false);
        for (Metric metric : Metrics.all()) {
            Reading reading = metric.read(assessment);
            json.quantity(metric.id(), reading.value(), metric.unit(), metric.standing(), reading.band());
        }
        json.out().endObject();
    }

    private static void bench(Assessment assessment, ResultJson json) {
        JsonWriter out = json.out();
        out.name("bending").beginObject(false);
        json.computed("moment45", assessment.bending().momentNmm(), "N·mm");
        json.computed("force45", assessment.bending().forceN(), "N");
        json.computed("endSlope45", assessment.bending().endSlopeDeg(), "°");
        json.computed("greatestStrain45", 100 * assessment.bending().greatestStrain(), "%");
        json.computed("greatestStrainLevel", assessment.bending().strainLevelMm(), "mm");
        assessment
                .bending()
                .setDeg()
                .ifPresent(set -> json.quantity("set45", set, "°", Standing.ESTIMATE, Optional.empty()));
        limit(assessment.bending().limit(), out);
        out.endObject();
        out.name("twisting").beginObject(false);
        json.computed("twistPerTorque", assessment.twisting().twistRadPerNmm(), "rad/N·mm");
        json.computed("weakestLevel", assessment.twisting().weakestLevelMm(), "mm");
        estimate("fracture-torque", "torqueAtFracture", assessment, json);
        estimate("fracture-angle", "angleAtFracture", assessment, json);
        limit(assessment.twisting().limit(), out);
        out.endObject();
    }

    /** What a metric reads, with its band. */
    private static void estimate(String metric, String name, Assessment assessment, ResultJson json) {
        Metrics.find(metric).ifPresent(known -> {
            Reading reading = known.read(assessment);
            json.quantity(name, reading.value(), known.unit(), known.standing(), reading.band());
        });
    }

    private static void fatigue(FatigueResult fatigue, JsonWriter out) {
        out.name("fatigue").beginObject(false);
        out.name("standing").text(Standing.ESTIMATE.word());
        out.name("tubeAngleDeg").number(fatigue.tube().angleDeg());
        out.name("tubeRadiusMm").number(fatigue.tube().radiusMm());
        out.name("speedRpm").number(fatigue.speedRpm());
        out.name("unbroken").flag(fatigue.unbroken());
        out.name("extrapolated").flag(fatigue.extrapolated());
        out.name("bandSamples").number(LatinHypercube.SAMPLES);
        out.name("bandSeed").number(LatinHypercube.SEED);
        out.name("source").text(fatigue.source());
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
