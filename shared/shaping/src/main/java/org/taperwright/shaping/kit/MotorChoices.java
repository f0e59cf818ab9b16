package org.taperwright.shaping.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.instrument.MotorFits;

/** Which motor a kit's powered instruments can be driven by. */
public final class MotorChoices {
    private MotorChoices() {}

    /** Every motor, those that can drive the most of the kit first, then by name. */
    public static List<MotorChoice> of(Kit kit, Map<ThingId, Instrument> catalogue, Map<ThingId, Motor> motors) {
        Map<ThingId, Instrument> powered = powered(kit, catalogue);
        List<MotorChoice> choices = new ArrayList<>();
        motors.forEach((id, motor) -> choices.add(new MotorChoice(id, motor.name(), MotorFits.of(motor, powered))));
        choices.sort(
                Comparator.comparingInt((MotorChoice choice) -> choice.missing().size())
                        .thenComparing(MotorChoice::name)
                        .thenComparing(MotorChoice::motor));
        return choices;
    }

    private static Map<ThingId, Instrument> powered(Kit kit, Map<ThingId, Instrument> catalogue) {
        Map<ThingId, Instrument> powered = new LinkedHashMap<>();
        for (Piece piece : kit.inUse()) {
            Optional.ofNullable(catalogue.get(piece.instrument()))
                    .filter(entry -> entry.drive() == Drive.POWERED)
                    .ifPresent(entry -> powered.put(piece.instrument(), entry));
        }
        return powered;
    }
}
