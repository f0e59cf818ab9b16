package org.taperwright.shaping.kit;

import java.util.List;
import java.util.Map;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.MotorFit;

/**
 * A motor set against the powered instruments of a kit.
 *
 * @param motor the motor
 * @param name its name
 * @param fits for each powered instrument of the pieces in use, each once, whether it can drive it
 */
public record MotorChoice(ThingId motor, String name, Map<ThingId, MotorFit> fits) {
    public MotorChoice {
        fits = Map.copyOf(fits);
    }

    /** The instruments it cannot drive, by identifier. */
    public List<ThingId> missing() {
        return fits.entrySet().stream()
                .filter(fit -> !fit.getValue().drives())
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
    }
}
