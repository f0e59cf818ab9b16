package org.taperwright.comparer.ui;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JPanel;
import org.taperwright.library.store.MeasuredOn;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.assessment.BenchBands;
import org.taperwright.mechanics.bench.CurvePoint;
import org.taperwright.mechanics.bench.StandardLimit;
import org.taperwright.mechanics.bench.spread.CurveBand;
import org.taperwright.mechanics.measured.BenchCurve;
import org.taperwright.mechanics.measured.MeasuredCurve;
import org.taperwright.workbench.ui.Plot;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.XyPlot;

/**
 * The curves of a bench test: moment at the clamp against the chord's angle, or torque against the angle turned, with their 5
 * to 95 % bands, the standard's limits of the sizes shown, and measured points.
 */
final class BenchFigure extends JPanel {
    private final BenchCurve test;
    private final XyPlot plot;

    BenchFigure(BenchCurve test) {
        super(new BorderLayout());
        this.test = test;
        plot = test == BenchCurve.BENDING
                ? new XyPlot("comparison.bending", "Bending test")
                : new XyPlot("comparison.twisting", "Twisting test");
        setOpaque(false);
        setBorder(Spacing.around(Spacing.NEAR, 0));
        add(plot, BorderLayout.CENTER);
    }

    void show(Compared compared, List<SeriesLook> looks, List<MeasuredOn> measured) {
        List<Plot.Curve> curves = new ArrayList<>();
        List<Plot.Band> bands = new ArrayList<>();
        Map<Double, String> limits = new LinkedHashMap<>();
        for (int i = 0; i < compared.members().size(); i++) {
            SeriesLook look = looks.get(i);
            Member member = compared.members().get(i);
            compared.bands().get(i).ifPresent(known -> bands.add(band(member.name(), curve(known), look)));
            compared.assessment(i).ifPresent(assessment -> {
                curves.add(curve(member.name(), curve(assessment), look, Plot.Style.LINE));
                limit(assessment)
                        .ifPresent(limit -> limits.merge(
                                limit.valueNmm(),
                                "size " + size(assessment),
                                (a, b) -> a.equals(b) ? a : a + ", " + b));
            });
            for (MeasuredOn each : measured) {
                if (each.design().equals(member.id())
                        && each.measured() instanceof MeasuredCurve curve
                        && curve.test() == test) {
                    curves.add(curve(curve.label() + " (measured)", curve.points(), look, Plot.Style.SPOTS));
                }
            }
        }
        String which = test == BenchCurve.BENDING ? "standard's most, " : "standard's least, ";
        List<Plot.Rule> rules = limits.entrySet().stream()
                .map(limit -> new Plot.Rule(which + limit.getValue(), Plot.Run.ACROSS, limit.getKey()))
                .toList();
        Plot.Axis angle = test == BenchCurve.BENDING
                ? Plot.Axis.of("Angle of the chord", "°", 0, 50)
                : Plot.Axis.of("Angle turned", "°");
        plot.setPlot(new Plot(
                angle,
                Plot.Axis.of(test == BenchCurve.BENDING ? "Moment at the clamp" : "Torque", "N·mm"),
                curves,
                bands,
                rules));
    }

    void setRemark(String words) {
        plot.setRemark(words);
    }

    private List<CurvePoint> curve(Assessment assessment) {
        return test == BenchCurve.BENDING
                ? assessment.bending().curve()
                : assessment.twisting().curve();
    }

    private List<CurveBand> curve(BenchBands known) {
        return test == BenchCurve.BENDING
                ? known.bending().curve()
                : known.twisting().curve();
    }

    private Optional<StandardLimit> limit(Assessment assessment) {
        return test == BenchCurve.BENDING
                ? assessment.bending().limit()
                : assessment.twisting().limit();
    }

    private static Plot.Curve curve(String name, List<CurvePoint> points, SeriesLook look, Plot.Style style) {
        return new Plot.Curve(
                name,
                look,
                style,
                points.stream()
                        .map(point -> new Plot.Spot(point.angleDeg(), point.momentNmm()))
                        .toList());
    }

    private static long size(Assessment assessment) {
        return Math.round(assessment.design().tipDiameterMm() * 100);
    }

    private static Plot.Band band(String name, List<CurveBand> curve, SeriesLook look) {
        return new Plot.Band(
                name + ", 5 to 95 %",
                look,
                curve.stream()
                        .map(point ->
                                new Plot.Spot(point.angleDeg(), point.band().low()))
                        .toList(),
                curve.stream()
                        .map(point ->
                                new Plot.Spot(point.angleDeg(), point.band().high()))
                        .toList());
    }
}
