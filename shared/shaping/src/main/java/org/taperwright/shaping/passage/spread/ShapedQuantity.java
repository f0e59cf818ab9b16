package org.taperwright.shaping.passage.spread;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.shaping.passage.Third;
import org.taperwright.shaping.passage.stroke.CanalOutcome;
import org.taperwright.shaping.passage.stroke.LeastDentine;
import org.taperwright.shaping.passage.stroke.ShapedSequence;
import org.taperwright.shaping.passage.stroke.StepOutcome;
import org.taperwright.shaping.passage.stroke.Transportation;

/**
 * A number that a shaped sequence answers.
 *
 * @param step the step's place from 0; empty for the whole
 * @param name its name in the words of the JSON form
 * @param label what people call it
 * @param unit unit; empty for a plain number
 * @param standing how far it may be trusted
 * @param value the number; empty where the step was not made, or where there is no finite one
 */
public record ShapedQuantity(
        Optional<Integer> step,
        String name,
        String label,
        String unit,
        Standing standing,
        Function<ShapedSequence, OptionalDouble> value) {
    private static final String TORQUE_UNIT = "N·mm";

    private static final double NMM_PER_NCM = 10;

    /** The unit people are shown: torque in N·cm, as motors have it. */
    public String shownUnit() {
        return unit.equals(TORQUE_UNIT) ? "N·cm" : unit;
    }

    /** A number of this quantity in the unit people are shown. */
    public double shown(double number) {
        return unit.equals(TORQUE_UNIT) ? number / NMM_PER_NCM : number;
    }

    /** All of a sequence of a number of steps: its steps' first. */
    public static List<ShapedQuantity> of(int steps) {
        List<ShapedQuantity> all = new ArrayList<>();
        for (int i = 0; i < steps; i++) {
            all.addAll(step(i));
        }
        all.addAll(whole());
        return all;
    }

    private static List<ShapedQuantity> step(int place) {
        return List.of(
                step(
                        place,
                        "torqueNmm",
                        "torque",
                        TORQUE_UNIT,
                        Standing.INDEX,
                        step -> step.torque().totalNmm()),
                step(place, "torsionalReserve", "torsional reserve", "", Standing.INDEX, StepOutcome::reserve),
                step(place, "lifeSpent", "life spent", "", Standing.INDEX, StepOutcome::damage),
                step(
                        place,
                        "lifeLevelMm",
                        "level of most life spent",
                        "mm",
                        Standing.INDEX,
                        step -> step.damage() > 0 ? step.damageLevelMm() : Double.NaN),
                step(place, "roomFilled", "flute room filled", "", Standing.ESTIMATE, StepOutcome::roomFilled),
                step(place, "removedMm3", "dentine removed", "mm³", Standing.COMPUTED, StepOutcome::wholeRemovedMm3),
                step(place, "greatestStrain", "strain", "", Standing.COMPUTED, StepOutcome::greatestStrain),
                step(place, "tipForceN", "side force at the tip", "N", Standing.COMPUTED, StepOutcome::tipForceN),
                step(place, "tipOffsetMm", "tip off the axis", "mm", Standing.COMPUTED, StepOutcome::tipOffsetMm));
    }

    private static List<ShapedQuantity> whole() {
        List<ShapedQuantity> all = new ArrayList<>();
        for (double from : CanalOutcome.FROM_END_MM) {
            int mm = (int) from;
            all.add(whole(
                    "transportedMm." + mm,
                    "transported " + mm + " mm from the end",
                    "mm",
                    Standing.INDEX,
                    canal -> at(canal, from).map(Transportation::transportedMm).orElse(Double.NaN)));
            all.add(whole(
                    "centringRatio." + mm,
                    "centring ratio " + mm + " mm from the end",
                    "",
                    Standing.INDEX,
                    canal -> at(canal, from).flatMap(Transportation::centring).orElse(Double.NaN)));
        }
        all.add(whole("touchedShare", "share of wall worn", "", Standing.ESTIMATE, CanalOutcome::touchedShare));
        all.add(whole(
                "leastDentineMm",
                "least dentine",
                "mm",
                Standing.ESTIMATE,
                canal -> canal.leastDentine().map(LeastDentine::thicknessMm).orElse(Double.NaN)));
        all.add(whole("volumeMm3", "volume after", "mm³", Standing.COMPUTED, canal -> sum(canal.afterMm3())));
        return all;
    }

    private static Optional<Transportation> at(CanalOutcome canal, double fromEndMm) {
        return canal.transportation().stream()
                .filter(moved -> moved.fromEndMm() == fromEndMm)
                .findFirst();
    }

    private static double sum(Map<Third, Double> volumes) {
        return volumes.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    private static ShapedQuantity step(
            int place, String name, String label, String unit, Standing standing, ToDoubleFunction<StepOutcome> value) {
        return new ShapedQuantity(
                Optional.of(place),
                name,
                label,
                unit,
                standing,
                shaped -> finite(Optional.ofNullable(shaped.byPlace().get(place)), value));
    }

    private static ShapedQuantity whole(
            String name, String label, String unit, Standing standing, ToDoubleFunction<CanalOutcome> value) {
        return new ShapedQuantity(
                Optional.empty(), name, label, unit, standing, shaped -> finite(shaped.canal(), value));
    }

    private static <T> OptionalDouble finite(Optional<T> thing, ToDoubleFunction<T> value) {
        double number = thing.map(value::applyAsDouble).orElse(Double.NaN);
        return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
    }
}
