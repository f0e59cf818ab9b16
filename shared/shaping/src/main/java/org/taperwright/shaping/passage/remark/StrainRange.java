package org.taperwright.shaping.passage.remark;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.fatigue.StrainLife;
import org.taperwright.mechanics.fatigue.StrainLives;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.passage.stroke.ShapedSequence;
import org.taperwright.shaping.passage.stroke.StepOutcome;
import org.taperwright.shaping.sequence.ArrangedSequence;

/**
 * A step whose life spent rests on strains beyond what the source of the strain-life law tested. A step that spends no life, as one
 * by hand that does not turn or one whose strain stays below the endurance strain, rests on nothing and is not marked.
 */
public final class StrainRange implements ShapedRule {
    @Override
    public String id() {
        return "strain-range";
    }

    @Override
    public String explanation() {
        return "An instrument is strained within what the law of its life was tested for.";
    }

    @Override
    public String source() {
        return "the alloy's strain-life law states its range";
    }

    @Override
    public List<Fault> check(ArrangedSequence arranged, ShapedSequence shaped) {
        List<Fault> marks = new ArrayList<>();
        shaped.byPlace()
                .forEach((place, step) -> arranged.working(place)
                        .flatMap(working -> arranged.alloys()
                                .find(working.instrument().design().alloy()))
                        .map(StrainLives::of)
                        .filter(life -> outside(life, step))
                        .ifPresent(life -> marks.add(mark(life, step, "steps[" + place + "].instrument"))));
        return marks;
    }

    private static boolean outside(StrainLife life, StepOutcome step) {
        return step.damage() > 0
                && life.cycles(step.greatestStrain()) < StrainLife.RUN_OUT
                && life.extrapolates(step.greatestStrain());
    }

    private static Fault mark(StrainLife life, StepOutcome step, String where) {
        return Fault.unusual(
                where,
                "it is strained by " + Shown.percent(step.greatestStrain())
                        + ", outside what the law of its life was tested for",
                "take its share of life for rough; tested from " + Shown.percent(life.validFrom()) + " to "
                        + Shown.percent(life.validTo()));
    }
}
