package org.taperwright.shaping.kit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.design.SizeColour;
import org.taperwright.shaping.instrument.MotorFit;

/**
 * A kit as it is printed.
 *
 * @param name the kit's name
 * @param purpose what it is for
 * @param date day as of which it is
 * @param motor its motor's name, where one is chosen
 * @param pieces those in use, in the kit's order
 * @param discard what to discard and why
 * @param discarded those discarded already
 * @param coverage what it has for each saved sequence
 * @param note the kit's note
 */
public record KitCard(
        String name,
        String purpose,
        LocalDate date,
        Optional<String> motor,
        List<Line> pieces,
        DiscardList discard,
        List<Piece> discarded,
        List<Coverage> coverage,
        String note) {
    /** What stands on every card. */
    public static final List<String> CAUTIONS = List.of(
            "Computed values compare and teach; they do not replace the manufacturer's instructions, local rules or"
                    + " licensed clinical judgement.",
            "A share of life spent is an estimate with its band: an instrument may break with any share of it left.",
            "That no rule would have a piece discarded does not say that it may be used: look at each piece before and"
                    + " after every use.",
            "Keep whatever could identify a patient off this card.");

    public KitCard {
        pieces = List.copyOf(pieces);
        discarded = List.copyOf(discarded);
        coverage = List.copyOf(coverage);
    }

    /**
     * A piece in use.
     *
     * @param piece the piece
     * @param entry what its catalogue entry adds, unless that is gone
     */
    public record Line(Piece piece, Optional<FromCatalogue> entry) {
        /** Uses against those allowed: {@code 3 of 6}, or {@code 3} when the maker states none. */
        public String uses() {
            return piece.uses()
                    + entry.map(FromCatalogue::usesAllowed)
                            .filter(allowed -> allowed > 0)
                            .map(allowed -> " of " + allowed)
                            .orElse("");
        }
    }

    /**
     * What the catalogue says of a piece.
     *
     * @param designation size and taper as written
     * @param colour of the size by ISO 3630-1
     * @param lengthMm from tip to handle
     * @param motion how it is moved
     * @param usesAllowed 0 when not stated
     * @param fit how the kit's motor drives it; absent by hand or without a motor
     */
    public record FromCatalogue(
            String designation,
            Optional<SizeColour> colour,
            double lengthMm,
            String motion,
            int usesAllowed,
            Optional<MotorFit> fit) {}
}
