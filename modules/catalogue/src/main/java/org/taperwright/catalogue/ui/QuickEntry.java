package org.taperwright.catalogue.ui;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.taperwright.library.history.Change;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Designation;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;

/**
 * New instruments from little: sizes, taper, type and length fill the rest. The design is assumed from the library's
 * instrument of that type that is nearest in size, or from the standard's plain design when there is none.
 *
 * @param sizes sizes, hundredths of a millimetre at the tip
 * @param taper taper over the whole working part, mm/mm
 * @param type the trade's type
 * @param lengthMm length from tip to handle, mm
 */
record QuickEntry(List<Integer> sizes, double taper, String type, double lengthMm) {
    private static final double PER_MM = 100;

    QuickEntry {
        sizes = List.copyOf(sizes);
    }

    /** A named edit. */
    record Edit(String name, List<Change> changes) {}

    /** The edit that adds the instruments. */
    Edit edit(List<InstrumentRow> known) {
        List<Change> changes = new ArrayList<>();
        for (int size : sizes) {
            changes.add(new Change.Put(ThingId.fresh(), instrument(size, known)));
        }
        Instrument first = (Instrument) ((Change.Put) changes.get(0)).thing();
        String name = sizes.size() == 1
                ? "Add " + first.name()
                : String.format(
                        Locale.ROOT,
                        "Add %d instruments, %s %02d to %02d",
                        sizes.size(),
                        type,
                        sizes.get(0),
                        sizes.get(sizes.size() - 1));
        return new Edit(name, changes);
    }

    /** The instrument of a size. */
    Instrument instrument(int size, List<InstrumentRow> known) {
        Optional<Instrument> model = model(size, known);
        Design like = model.map(Instrument::design).orElseGet(() -> Designs.standard(size, taper));
        Design sized = sized(like, size);
        String name = type + " " + Designation.of(sized).text();
        return new Instrument(
                name,
                "",
                "",
                type,
                model.map(Instrument::drive).orElse(Drive.HAND),
                named(sized, name),
                Optional.empty(),
                true,
                Optional.empty(),
                Optional.empty(),
                0,
                model.map(found -> "Design assumed from " + found.name())
                        .orElse("Design assumed: the standard's plain design"));
    }

    /** How many instruments of the library are the same by designation, type and length. */
    long alike(List<InstrumentRow> known) {
        return known.stream()
                .filter(row -> row.instrument().type().equals(type)
                        && sizes.contains(row.designation().size())
                        && Math.abs(row.designation().taper() - taper) < 1e-9
                        && Math.abs(row.instrument().design().lengthMm() - lengthMm) < 1e-9)
                .count();
    }

    private Optional<Instrument> model(int size, List<InstrumentRow> known) {
        return known.stream()
                .filter(row -> row.instrument().type().equals(type))
                .min(Comparator.comparingInt((InstrumentRow row) ->
                                Math.abs(row.designation().size() - size))
                        .thenComparing(InstrumentRow::id))
                .map(InstrumentRow::instrument);
    }

    private Design sized(Design like, int size) {
        double workingPart = Math.min(like.workingPartMm(), lengthMm);
        return new Design(
                like.name(),
                "",
                size / PER_MM,
                List.of(new TaperSegment(0, workingPart, taper)),
                OptionalDouble.empty(),
                lengthMm,
                like.sections(),
                like.flutes(),
                like.hand(),
                like.tip(),
                like.alloy(),
                like.making(),
                like.motion());
    }

    private static Design named(Design design, String name) {
        return (Design) Renamed.of(design, name);
    }
}
