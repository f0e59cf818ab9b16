package org.taperwright.shaping.passage.stroke;

import java.util.Optional;
import java.util.function.Function;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.instrument.Reciprocation;
import org.taperwright.shaping.instrument.Window;
import org.taperwright.shaping.sequence.ArrangedSequence.Working;
import org.taperwright.shaping.sequence.SetAngles;

/**
 * Angles by which a step reciprocates: those set in the step; else the middle of what instrument and motor both allow, or of what one
 * of them states; else {@link SetAngles#USUAL}.
 */
final class ReciprocationAngles {
    private ReciprocationAngles() {}

    static SetAngles of(Working working, Optional<Motor> motor) {
        return working.step().angles().orElseGet(() -> {
            Optional<Reciprocation> instrument = working.instrument().reciprocation();
            Optional<Reciprocation> range = motor.flatMap(Motor::reciprocation);
            return new SetAngles(
                    middle(instrument, range, Reciprocation::cuttingDeg).orElse(SetAngles.USUAL.cuttingDeg()),
                    middle(instrument, range, Reciprocation::releasingDeg).orElse(SetAngles.USUAL.releasingDeg()));
        });
    }

    private static Optional<Double> middle(
            Optional<Reciprocation> instrument, Optional<Reciprocation> motor, Function<Reciprocation, Window> angle) {
        Optional<Window> needed = instrument.map(angle);
        Optional<Window> range = motor.map(angle);
        if (needed.isPresent() && range.isPresent()) {
            double least = Math.max(needed.get().least(), range.get().least());
            double most = Math.min(needed.get().most(), range.get().most());
            if (least <= most) {
                return Optional.of((least + most) / 2);
            }
        }
        return needed.or(() -> range).map(window -> (window.least() + window.most()) / 2);
    }
}
