package org.taperwright.mechanics.comparison.sweep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.work.Progress;

/**
 * Which parameter of a design moves a metric most: each moved by itself, an amount a little to either side and a choice to every
 * other option ({@link DesignParameter#nearby}). Says what happens near this design only, and nothing of moving two at once.
 *
 * @param design the design
 * @param here the design as it is
 * @param swings one for each parameter
 */
public record Tornado(Design design, SweepPoint here, List<Swing> swings) {
    public Tornado {
        swings = List.copyOf(swings);
    }

    /** Moves every parameter of a design. */
    public static Tornado of(Design design, KnownAlloys alloys, List<Metric> metrics, Progress progress) {
        List<DesignParameter> parameters = DesignParameters.of(design, alloys);
        List<Setting> settings = new ArrayList<>();
        parameters.forEach(parameter -> settings.addAll(parameter.nearby(design)));
        Points points = new Points(alloys, metrics, progress);
        SweepPoint here = points.here(design, parameters.get(0));
        List<SweepPoint> moved = points.at(settings);
        List<Swing> swings = new ArrayList<>();
        int next = 0;
        for (DesignParameter parameter : parameters) {
            int many = parameter.nearby(design).size();
            swings.add(new Swing(parameter, moved.subList(next, next + many)));
            next += many;
        }
        return new Tornado(design, here, swings);
    }

    /** The swings that move a metric at all, the widest first. */
    public List<Swing> by(Metric metric) {
        return swings.stream()
                .filter(swing -> swing.width(metric, here) > 0)
                .sorted(Comparator.comparingDouble(swing -> -swing.width(metric, here)))
                .toList();
    }
}
