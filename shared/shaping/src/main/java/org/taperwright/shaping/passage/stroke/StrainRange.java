package org.taperwright.shaping.passage.stroke;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.fatigue.StrainLife;
import org.taperwright.mechanics.fatigue.StrainLives;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;

/**
 * Marks the steps whose life spent rests on strains beyond what the source of the strain-life law tested. A step that spends no life,
 * as one by hand that does not turn or one whose strain stays below the endurance strain, rests on nothing and is not marked.
 */
public final class StrainRange {
    private StrainRange() {}

    /** The marks; where is "steps[i].instrument". */
    public static List<Fault> outside(PreparedSequence prepared, ShapedSequence shaped) {
        List<Fault> marks = new ArrayList<>();
        shaped.byPlace().forEach((place, step) -> {
            Optional<StrainLife> law = prepared.alloys().get(place).map((Alloy alloy) -> StrainLives.of(alloy));
            law.filter(life -> outside(life, step))
                    .ifPresent(life -> marks.add(PreparedSequence.in(place, mark(life, step))));
        });
        return marks;
    }

    private static boolean outside(StrainLife life, StepOutcome step) {
        return step.damage() > 0
                && life.cycles(step.greatestStrain()) < StrainLife.RUN_OUT
                && life.extrapolates(step.greatestStrain());
    }

    private static Fault mark(StrainLife life, StepOutcome step) {
        return Fault.unusual(
                "instrument",
                "it is strained by " + Shown.percent(step.greatestStrain())
                        + ", outside what the law of its life was tested for",
                "take its share of life for rough; tested from " + Shown.percent(life.validFrom()) + " to "
                        + Shown.percent(life.validTo()));
    }
}
