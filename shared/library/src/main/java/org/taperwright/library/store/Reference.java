package org.taperwright.library.store;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.kit.Kit;
import org.taperwright.shaping.kit.Piece;
import org.taperwright.shaping.sequence.Sequence;

/**
 * One thing's reference to another.
 *
 * @param where the field, in the words of the JSON form
 * @param to the identifier referred to
 * @param kind the kind of thing that should bear it
 */
public record Reference(String where, ThingId to, ThingKind kind) {
    /** All references of a thing. */
    public static List<Reference> of(Record thing) {
        List<Reference> references = new ArrayList<>();
        if (thing instanceof Design design) {
            ofAlloy("alloy", design, references);
        }
        if (thing instanceof Instrument instrument) {
            ofAlloy("design.alloy", instrument.design(), references);
            instrument.designId().ifPresent(id -> references.add(new Reference("designId", id, ThingKind.DESIGN)));
        }
        if (thing instanceof Sequence sequence) {
            sequence.canal().ifPresent(id -> references.add(new Reference("canal", id, ThingKind.CANAL)));
            sequence.motor().ifPresent(id -> references.add(new Reference("motor", id, ThingKind.MOTOR)));
            for (int i = 0; i < sequence.steps().size(); i++) {
                String where = "steps[" + i + "].instrument";
                sequence.steps()
                        .get(i)
                        .uses()
                        .ifPresent(id -> references.add(new Reference(where, id, ThingKind.INSTRUMENT)));
            }
        }
        if (thing instanceof Kit kit) {
            references.addAll(of(kit));
        }
        if (thing instanceof SavedComparison comparison) {
            for (int i = 0; i < comparison.designs().size(); i++) {
                references.add(
                        new Reference("designs[" + i + "]", comparison.designs().get(i), ThingKind.DESIGN));
            }
            references.add(new Reference("datum", comparison.datum(), ThingKind.DESIGN));
            for (int i = 0; i < comparison.measured().size(); i++) {
                ThingId on = comparison.measured().get(i).design();
                references.add(new Reference("measured[" + i + "].design", on, ThingKind.DESIGN));
            }
        }
        if (thing instanceof SavedFilter saved) {
            saved.filter().motor().ifPresent(id -> references.add(new Reference("motor", id, ThingKind.MOTOR)));
        }
        return references;
    }

    /** An alloy that comes with the program is no thing of a library. */
    private static void ofAlloy(String where, Design design, List<Reference> references) {
        if (Alloys.find(design.alloy()).isEmpty() && ThingId.fits(design.alloy())) {
            references.add(new Reference(where, new ThingId(design.alloy()), ThingKind.ALLOY));
        }
    }

    private static List<Reference> of(Kit kit) {
        List<Reference> references = new ArrayList<>();
        kit.motor().ifPresent(id -> references.add(new Reference("motor", id, ThingKind.MOTOR)));
        for (int i = 0; i < kit.pieces().size(); i++) {
            Piece piece = kit.pieces().get(i);
            String where = "pieces[" + i + "].";
            references.add(new Reference(where + "instrument", piece.instrument(), ThingKind.INSTRUMENT));
            for (int j = 0; j < piece.log().size(); j++) {
                String sequence = where + "log[" + j + "].sequence";
                piece.log()
                        .get(j)
                        .sequence()
                        .ifPresent(id -> references.add(new Reference(sequence, id, ThingKind.SEQUENCE)));
            }
        }
        return references;
    }
}
