package org.taperwright.comparer.ui;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JPanel;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.bench.spread.CurveBand;
import org.taperwright.workbench.ui.Plot;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.XyPlot;

/**
 * Moment at the clamp against the chord's angle in the bending test, with its 5 to 95 % band and the standard's limits of the
 * sizes shown.
 */
final class BendingFigure extends JPanel {
    private final XyPlot plot = new XyPlot("comparison.bending", "Bending test");

    BendingFigure() {
        super(new BorderLayout());
        setOpaque(false);
        setBorder(Spacing.around(Spacing.NEAR, 0));
        add(plot, BorderLayout.CENTER);
    }

    void show(Compared compared, List<SeriesLook> looks) {
        List<Plot.Curve> curves = new ArrayList<>();
        List<Plot.Band> bands = new ArrayList<>();
        Map<Double, String> limits = new LinkedHashMap<>();
        for (int i = 0; i < compared.members().size(); i++) {
            SeriesLook look = looks.get(i);
            String name = compared.members().get(i).name();
            compared.bands()
                    .get(i)
                    .ifPresent(known -> bands.add(band(name, known.bending().curve(), look)));
            compared.assessment(i).ifPresent(assessment -> {
                curves.add(curve(assessment, look));
                assessment
                        .bending()
                        .limit()
                        .ifPresent(limit -> limits.merge(
                                limit.valueNmm(),
                                "size " + size(assessment),
                                (a, b) -> a.equals(b) ? a : a + ", " + b));
            });
        }
        List<Plot.Rule> rules = limits.entrySet().stream()
                .map(limit -> new Plot.Rule("standard's most, " + limit.getValue(), Plot.Run.ACROSS, limit.getKey()))
                .toList();
        plot.setPlot(new Plot(
                Plot.Axis.of("Angle of the chord", "°", 0, 50),
                Plot.Axis.of("Moment at the clamp", "N·mm"),
                curves,
                bands,
                rules));
    }

    void setRemark(String words) {
        plot.setRemark(words);
    }

    private static Plot.Curve curve(Assessment assessment, SeriesLook look) {
        return new Plot.Curve(
                assessment.design().name(),
                look,
                Plot.Style.LINE,
                assessment.bending().curve().stream()
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
