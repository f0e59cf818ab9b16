package org.taperwright.command.print;

import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.mechanics.assessment.AssessedSection;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.bench.spread.TwistingSpread;
import org.taperwright.mechanics.properties.ProfilePoint;
import org.taperwright.mechanics.properties.SectionProperties;
import org.taperwright.mechanics.section.Edge;

/** A design's sections by station, of unit diameter d, and its blade along the length. */
final class BladeJson {
    private BladeJson() {}

    static void write(Assessment assessment, ResultJson json) {
        JsonWriter out = json.out();
        out.name("sections").beginList(false);
        assessment.stations().forEach(station -> section(station, json));
        out.endList();
        TwistingSpread twisting = assessment.twistingSpread();
        out.name("blade").beginList(false);
        assessment.profile().points().forEach(point -> point(point, twisting, json));
        out.endList();
    }

    private static void section(AssessedSection station, ResultJson json) {
        JsonWriter out = json.out();
        SectionProperties p = station.properties();
        out.beginObject(false);
        out.name("levelMm").number(station.levelMm());
        json.computed("area", p.area(), "d²", JsonSource.CONTOUR);
        json.computed("iGreatest", p.iMax(), "d⁴", JsonSource.CONTOUR);
        json.computed("iLeast", p.iMin(), "d⁴", JsonSource.CONTOUR);
        json.computed("polar", p.polar(), "d⁴", JsonSource.CONTOUR);
        json.computed("torsionConstant", p.torsionConstant(), "d⁴", JsonSource.TORSION);
        json.computed("peakShear", p.peakShear(), "T/d³", JsonSource.TORSION);
        out.name("peakShearSingular").flag(p.peakShearSingular());
        json.computed("plasticTorque", p.plasticTorque(), "k d³", JsonSource.TORSION);
        json.computed("plasticMomentLeast", p.plasticMomentLeast(), "Y d³", JsonSource.CONTOUR);
        json.computed("plasticMomentMost", p.plasticMomentMost(), "Y d³", JsonSource.CONTOUR);
        json.computed("core", p.core(), "d", JsonSource.CONTOUR);
        json.computed("inscribed", p.inscribed(), "d", JsonSource.CONTOUR);
        json.computed("chipSpace", p.chipSpace(), "d²", JsonSource.CONTOUR);
        out.name("edges").beginList(false);
        for (Edge edge : station.edges()) {
            out.beginObject(false);
            json.computed("angle", Math.toDegrees(edge.angle()), "°", JsonSource.CONTOUR);
            json.computed("rake", edge.rakeDeg(), "°", JsonSource.CONTOUR);
            json.computed("wedge", edge.wedgeDeg(), "°", JsonSource.CONTOUR);
            json.computed("clearance", edge.clearanceDeg(), "°", JsonSource.CONTOUR);
            json.computed("landWidth", edge.landWidth(), "d", JsonSource.CONTOUR);
            out.endObject();
        }
        out.endList();
        out.endObject();
    }

    private static void point(ProfilePoint p, TwistingSpread twisting, ResultJson json) {
        JsonWriter out = json.out();
        out.beginObject(false);
        out.name("levelMm").number(p.levelMm());
        json.computed("diameter", p.diameterMm(), "mm", JsonSource.DESIGN);
        json.computed("area", p.areaMm2(), "mm²", JsonSource.CONTOUR);
        json.computed("bendingStiffness", p.bendingStiffnessNmm2(), "N·mm²", JsonSource.STIFFNESS);
        json.computed("torsionalStiffness", p.torsionalStiffnessNmm2(), "N·mm²", JsonSource.STIFFNESS);
        json.estimate(
                "plasticTorque", twisting.likePlastic(p.plasticTorqueNmm()).reading(), "N·mm", JsonSource.PLASTIC);
        json.computed("core", p.coreMm(), "mm", JsonSource.CONTOUR);
        json.computed("chipSpace", p.chipSpaceMm2(), "mm²", JsonSource.CONTOUR);
        json.computed("helixAngle", p.helixAngleDeg(), "°", JsonSource.DESIGN);
        out.endObject();
    }
}
