package org.taperwright.designer.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.assessment.BenchBands;
import org.taperwright.mechanics.bench.BendingResult;
import org.taperwright.mechanics.bench.StandardLimit;
import org.taperwright.mechanics.bench.TwistingResult;
import org.taperwright.mechanics.bench.spread.CurveBand;
import org.taperwright.mechanics.properties.ProfilePoint;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.workbench.ui.Plot;
import org.taperwright.workbench.ui.QuantityKind;
import org.taperwright.workbench.ui.SeriesLook;

/** The plots of one assessment: along the blade, and both bench tests. */
record BladePlots(Assessment assessment, BenchBands bands, SeriesLook look, double levelMm) {
    private static final double NMM_PER_NCM = 10;

    /** Diameter and core. */
    Plot diameters() {
        return along(
                "Diameter",
                "mm",
                List.of(
                        curve("outside", Plot.Style.LINE, ProfilePoint::diameterMm),
                        curve("core", Plot.Style.THIN_LINE, ProfilePoint::coreMm)));
    }

    /** Bending and torsional stiffness. */
    Plot stiffnesses() {
        return along(
                "Stiffness",
                "N\u00b7mm\u00b2",
                List.of(
                        curve("bending EI", Plot.Style.LINE, ProfilePoint::bendingStiffnessNmm2),
                        curve("torsion GJ", Plot.Style.THIN_LINE, ProfilePoint::torsionalStiffnessNmm2)));
    }

    /** Moment at the clamp against the chord's angle, to 45 degrees. */
    Plot bending() {
        BendingResult result = assessment.bending();
        return bench(
                "Angle of the chord", "Moment at the clamp", bands.bending().curve(), result.limit());
    }

    /** Torque against the angle of twist, up to fracture. */
    Plot twisting() {
        TwistingResult result = assessment.twisting();
        Plot plot = bench("Angle of twist", "Torque", bands.twisting().curve(), result.limit());
        List<Plot.Rule> rules = new ArrayList<>(plot.rules());
        rules.add(new Plot.Rule("fracture", Plot.Run.ACROSS, result.fractureTorqueNmm() / NMM_PER_NCM));
        return new Plot(plot.x(), plot.y(), plot.curves(), plot.bands(), rules);
    }

    private Plot along(String title, String unit, List<Plot.Curve> curves) {
        double end = assessment.design().workingPartMm();
        return new Plot(
                Plot.Axis.of("Distance from the tip", "mm", 0, end),
                Plot.Axis.of(title, unit),
                curves,
                List.of(),
                levelMm <= end
                        ? List.of(
                                new Plot.Rule(QuantityKind.length(0, end, 1).write(levelMm), Plot.Run.UPRIGHT, levelMm))
                        : List.of());
    }

    private Plot.Curve curve(String name, Plot.Style style, ToDoubleFunction<ProfilePoint> value) {
        List<Plot.Spot> spots = assessment.profile().points().stream()
                .map(point -> new Plot.Spot(point.levelMm(), value.applyAsDouble(point)))
                .toList();
        return new Plot.Curve(name, look, style, spots);
    }

    private Plot bench(String x, String y, List<CurveBand> curve, Optional<StandardLimit> limit) {
        List<Plot.Spot> spots = curve.stream()
                .map(point -> new Plot.Spot(point.angleDeg(), point.momentNmm() / NMM_PER_NCM))
                .toList();
        List<Plot.Rule> rules = limit.stream()
                .map(known -> new Plot.Rule(
                        known.upper() ? "most by the standard" : "least by the standard",
                        Plot.Run.ACROSS,
                        known.valueNmm() / NMM_PER_NCM))
                .toList();
        return new Plot(
                Plot.Axis.of(x, "\u00b0"),
                Plot.Axis.of(y, "N\u00b7cm"),
                List.of(new Plot.Curve("", look, Plot.Style.LINE, spots)),
                List.of(new Plot.Band("5 to 95 %", look, edge(curve, Band::low), edge(curve, Band::high))),
                rules);
    }

    private static List<Plot.Spot> edge(List<CurveBand> curve, ToDoubleFunction<Band> end) {
        return curve.stream()
                .map(point -> new Plot.Spot(point.angleDeg(), end.applyAsDouble(point.band()) / NMM_PER_NCM))
                .toList();
    }
}
