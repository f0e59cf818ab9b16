package org.taperwright.shaping.kit;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Designation;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.instrument.MotorFits;
import org.taperwright.shaping.sequence.Sequence;

/** Makes kit cards. */
public final class KitCards {
    private KitCards() {}

    /**
     * The card of a kit as of a day.
     *
     * @param catalogue instruments by identifier
     * @param motors motors by identifier
     * @param sequences those whose coverage the card shows
     * @param rules by which pieces are discarded
     */
    public static KitCard of(
            Kit kit,
            Map<ThingId, Instrument> catalogue,
            Map<ThingId, Motor> motors,
            Map<ThingId, Sequence> sequences,
            List<DiscardRule> rules,
            LocalDate today) {
        Optional<Motor> motor = kit.motor().map(motors::get);
        return new KitCard(
                kit.name(),
                kit.purpose(),
                today,
                motor.map(Motor::name),
                kit.inUse().stream()
                        .map(piece -> new KitCard.Line(
                                piece,
                                Optional.ofNullable(catalogue.get(piece.instrument()))
                                        .map(entry -> fromCatalogue(entry, motor))))
                        .toList(),
                DiscardRules.list(kit, catalogue, rules, today),
                kit.pieces().stream()
                        .filter(piece -> piece.discarded().isPresent())
                        .toList(),
                Coverages.of(kit, catalogue, sequences),
                kit.note());
    }

    private static KitCard.FromCatalogue fromCatalogue(Instrument entry, Optional<Motor> motor) {
        Designation designation = Designation.of(entry);
        return new KitCard.FromCatalogue(
                designation.text(),
                designation.colour(),
                entry.design().lengthMm(),
                entry.design().motion().word(),
                entry.usesAllowed(),
                motor.filter(each -> entry.drive() == Drive.POWERED).map(each -> MotorFits.of(each, entry)));
    }
}
