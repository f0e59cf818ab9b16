package org.taperwright.mechanics.measured;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.AlloyConstant;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.fatigue.Fatigue;
import org.taperwright.mechanics.fatigue.StrainLife;
import org.taperwright.mechanics.fatigue.StrainLives;
import org.taperwright.mechanics.fatigue.Tube;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.work.Progress;

/**
 * Measured lives and the computed ones as a function of the constants of the strain-life law, both as natural logarithms, in which
 * the scatter between like pieces is of one size. The strain amplitudes follow from tube and blade and hang on none of the constants.
 * Lives that came to the end of a test, and those at strains near the endurance strain, are left out.
 */
final class LifeModel implements FitModel {
    private final Design design;
    private final Alloy alloy;
    private final List<AlloyConstant> constants;
    private final Progress progress;
    private final List<Used> used = new ArrayList<>();
    private int evaluations;

    /** The lives of a table that are used, with their strain amplitudes, and how many are not. */
    private record Used(MeasuredLives table, List<MeasuredLives.Life> lives, List<Double> strains, int left) {}

    LifeModel(
            Design design, Alloy alloy, List<AlloyConstant> constants, List<MeasuredLives> tables, Progress progress) {
        this.design = design;
        this.alloy = alloy;
        this.constants = constants;
        this.progress = progress;
        StrainLife law = StrainLives.of(alloy);
        double least = law.endurance().high() + law.shift().high();
        BladeSections sections = BladeSections.of(design);
        Map<Tube, Double> known = new HashMap<>();
        for (MeasuredLives table : tables) {
            List<MeasuredLives.Life> lives = new ArrayList<>();
            List<Double> strains = new ArrayList<>();
            for (MeasuredLives.Life life : table.lives()) {
                double strain = known.computeIfAbsent(
                        life.tube(),
                        tube -> Fatigue.in(tube, design, alloy, sections, Fatigue.USUAL_RPM)
                                .strain());
                if (strain > least && life.cycles() > 0 && life.cycles() < StrainLife.RUN_OUT) {
                    lives.add(life);
                    strains.add(strain);
                }
            }
            if (!lives.isEmpty()) {
                used.add(new Used(table, lives, strains, table.lives().size() - lives.size()));
            }
        }
    }

    /** How many lives are used. */
    int points() {
        return used.stream().mapToInt(each -> each.lives().size()).sum();
    }

    List<Residuals> residuals(double[] values) {
        progress.check();
        progress.at(Math.min(0.95, evaluations / (10.0 + evaluations)), "fit, " + evaluations + " evaluations");
        evaluations++;
        Alloy changed = alloy;
        for (int k = 0; k < values.length; k++) {
            changed = FitConstants.set(
                    changed, constants.get(k), values[k], constants.get(k).band());
        }
        List<Residuals> all = new ArrayList<>();
        for (Used each : used) {
            List<ResidualPoint> points = new ArrayList<>();
            for (int i = 0; i < each.lives().size(); i++) {
                double strain = each.strains().get(i);
                points.add(new ResidualPoint(
                        strain, each.lives().get(i).cycles(), Fatigue.life(strain, design.motion(), changed)));
            }
            all.add(new Residuals(each.table(), points, each.left()));
        }
        return all;
    }

    @Override
    public double[] computed(double[] values) {
        return residuals(values).stream()
                .flatMap(each -> each.points().stream())
                .mapToDouble(point -> Math.log(point.computed()))
                .toArray();
    }

    @Override
    public double[] measured() {
        return used.stream()
                .flatMap(each -> each.lives().stream())
                .mapToDouble(life -> Math.log(life.cycles()))
                .toArray();
    }

    List<AlloyConstant> constants() {
        return constants;
    }

    int evaluations() {
        return evaluations;
    }
}
