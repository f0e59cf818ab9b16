package org.taperwright.comparer.ui;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javax.swing.JPanel;
import org.taperwright.library.store.MeasuredOn;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.fatigue.Fatigue;
import org.taperwright.mechanics.fatigue.FatigueResult;
import org.taperwright.mechanics.fatigue.Tube;
import org.taperwright.mechanics.measured.MeasuredLives;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.Plot;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.XyPlot;

/**
 * Turns to fracture against the radius of the usual tube, on a scale of powers of ten, with their bands and measured lives. Computed
 * in the background, each design once.
 */
final class LivesFigure extends JPanel {
    private static final double FROM_MM = 2;
    private static final double TO_MM = 12;
    private static final int STEPS = 20;

    private final transient Desk desk;
    private transient Map<Assessment, List<FatigueResult>> known = Map.of();
    private final XyPlot plot = new XyPlot("comparison.lives", "Turning in a curve");

    LivesFigure(Desk desk) {
        super(new BorderLayout());
        this.desk = desk;
        setOpaque(false);
        setBorder(Spacing.around(Spacing.NEAR, 0));
        add(plot, BorderLayout.CENTER);
    }

    void show(Compared compared, List<SeriesLook> looks, List<MeasuredOn> measured) {
        draw(compared, looks, measured);
        List<Optional<Assessment>> wanted = new ArrayList<>();
        for (int i = 0; i < compared.members().size(); i++) {
            wanted.add(compared.assessment(i));
        }
        if (wanted.stream().allMatch(each -> each.map(known::containsKey).orElse(true))) {
            return;
        }
        Map<Assessment, List<FatigueResult>> before = Map.copyOf(known);
        desk.compute(this, "Lives in tubes", progress -> lives(wanted, before, progress), outcome -> {
            if (outcome instanceof Outcome.Current<Map<Assessment, List<FatigueResult>>> current) {
                known = current.value();
                draw(compared, looks, measured);
            }
        });
    }

    private static Map<Assessment, List<FatigueResult>> lives(
            List<Optional<Assessment>> wanted, Map<Assessment, List<FatigueResult>> before, Progress progress) {
        Map<Assessment, List<FatigueResult>> lives = new HashMap<>();
        for (Optional<Assessment> each : wanted) {
            progress.check();
            each.ifPresent(assessment -> {
                List<FatigueResult> there = before.get(assessment);
                lives.put(assessment, there == null ? lives(assessment) : there);
            });
        }
        return lives;
    }

    private void draw(Compared compared, List<SeriesLook> looks, List<MeasuredOn> measured) {
        List<Plot.Curve> curves = new ArrayList<>();
        List<Plot.Band> bands = new ArrayList<>();
        for (int i = 0; i < compared.members().size(); i++) {
            SeriesLook look = looks.get(i);
            Member member = compared.members().get(i);
            compared.assessment(i)
                    .flatMap(assessment -> Optional.ofNullable(known.get(assessment)))
                    .ifPresent(lives -> {
                        curves.add(new Plot.Curve(
                                member.name(), look, Plot.Style.LINE, spots(lives, FatigueResult::cycles)));
                        bands.add(new Plot.Band(
                                member.name() + ", 5 to 95 %",
                                look,
                                spots(lives, life -> life.band().low()),
                                spots(lives, life -> life.band().high())));
                    });
            for (MeasuredOn each : measured) {
                if (each.design().equals(member.id()) && each.measured() instanceof MeasuredLives lives) {
                    curves.add(new Plot.Curve(
                            lives.label() + " (measured)",
                            look,
                            Plot.Style.SPOTS,
                            lives.lives().stream()
                                    .map(life -> spot(life.tube().radiusMm(), life.cycles()))
                                    .toList()));
                }
            }
        }
        plot.setPlot(new Plot(
                Plot.Axis.of("Radius of a 60° tube", "mm", FROM_MM, TO_MM),
                Plot.Axis.of("Turns to fracture, as powers of ten", ""),
                curves,
                bands,
                List.of()));
    }

    private static List<Plot.Spot> spots(List<FatigueResult> lives, ToDoubleFunction<FatigueResult> cycles) {
        return lives.stream()
                .map(life -> spot(life.tube().radiusMm(), cycles.applyAsDouble(life)))
                .toList();
    }

    void setRemark(String words) {
        plot.setRemark(words);
    }

    private static List<FatigueResult> lives(Assessment assessment) {
        List<FatigueResult> lives = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double radius = FROM_MM + (TO_MM - FROM_MM) * i / STEPS;
            Tube tube = new Tube(Tube.USUAL.angleDeg(), radius, Tube.USUAL.middleMm(), Tube.USUAL.playMm());
            lives.add(Fatigue.in(tube, assessment.design(), assessment.alloy(), Fatigue.USUAL_RPM));
        }
        return lives;
    }

    private static Plot.Spot spot(double radiusMm, double cycles) {
        return new Plot.Spot(radiusMm, Math.log10(Math.max(1, cycles)));
    }
}
