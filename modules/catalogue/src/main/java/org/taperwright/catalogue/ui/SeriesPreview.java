package org.taperwright.catalogue.ui;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.taperwright.library.history.Change;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.IsoSizes;
import org.taperwright.mechanics.design.SizeColour;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.instrument.Designation;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.SizeSeries;
import org.taperwright.workbench.api.Work;

/**
 * What a series of sizes would add to a catalogue, worked out off the event thread.
 *
 * @param words what would be added, or why nothing can be
 * @param colour the word of the colour, for a single instrument
 * @param possible whether it can be added
 * @param name the edit's name
 * @param changes the edit
 */
record SeriesPreview(String words, Optional<String> colour, boolean possible, String name, List<Change> changes) {
    SeriesPreview {
        changes = List.copyOf(changes);
    }

    /** Works a preview out for the instruments of a list. */
    static Work<SeriesPreview> of(SizeSeries series, InstrumentList list) {
        return progress -> of(series, list, progress);
    }

    private static SeriesPreview of(SizeSeries series, InstrumentList list, Progress progress) {
        List<Fault> faults = series.faults();
        Optional<Fault> grave = faults.stream()
                .filter(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE)
                .findFirst();
        if (grave.isPresent()) {
            return new SeriesPreview(said(grave.get()), Optional.empty(), false, "", List.of());
        }
        List<Instrument> made = series.instruments(
                list.rows().stream().map(InstrumentRow::instrument).toList());
        progress.check();
        long alike = alike(series, list, made);
        String unusual =
                faults.stream().findFirst().map(fault -> "; " + said(fault)).orElse("");
        Instrument first = made.get(0);
        String words = (made.size() == 1 ? one(first) : many(series, made))
                + (alike == 0 ? "" : "; " + alike + " alike in the library already")
                + unusual;
        Optional<String> colour = made.size() == 1
                ? Designation.of(first).colour().map(SizeColour::word).or(() -> Optional.of(""))
                : Optional.empty();
        List<Change> changes = made.stream()
                .<Change>map(each -> new Change.Put(ThingId.fresh(), each))
                .toList();
        return new SeriesPreview(words, colour, true, name(series, made), changes);
    }

    private static String said(Fault fault) {
        return fault.what() + ", " + fault.expected();
    }

    private static String one(Instrument instrument) {
        Design design = instrument.design();
        Designation designation = Designation.of(design);
        return String.format(
                Locale.ROOT,
                "%s, %s; %.2f, %.2f, %.2f mm at 1, 3, %s",
                designation.text(),
                designation.colour().map(SizeColour::word).orElse("no colour in the standard"),
                design.diameterMm(1),
                design.diameterMm(3),
                design.diameterMm(design.workingPartMm()),
                Shown.mm(design.workingPartMm()));
    }

    private static String many(SizeSeries series, List<Instrument> made) {
        return String.format(
                Locale.UK,
                "%,d instruments: %d %s × %d %s × %d %s, %s and on",
                made.size(),
                series.sizes().size(),
                series.sizes().size() == 1 ? "size" : "sizes",
                series.tapers().size(),
                series.tapers().size() == 1 ? "taper" : "tapers",
                series.lengthsMm().size(),
                series.lengthsMm().size() == 1 ? "length" : "lengths",
                Designation.of(made.get(0)).text());
    }

    private static String name(SizeSeries series, List<Instrument> made) {
        List<Integer> sizes = series.sizes();
        return made.size() == 1
                ? "Add " + made.get(0).name()
                : "Add " + made.size() + " instruments, " + series.type() + " " + IsoSizes.text(sizes.get(0)) + " to "
                        + IsoSizes.text(sizes.get(sizes.size() - 1));
    }

    /** How many of the catalogue's instruments are of the same type, size, taper and length as one of the series. */
    private static long alike(SizeSeries series, InstrumentList list, List<Instrument> made) {
        Set<List<Object>> wanted = new HashSet<>();
        made.forEach(each -> wanted.add(measure(each, Designation.of(each))));
        return list.rows().stream()
                .filter(row -> row.instrument().type().equals(series.type())
                        && wanted.contains(measure(row.instrument(), row.designation())))
                .count();
    }

    private static List<Object> measure(Instrument instrument, Designation designation) {
        return List.of(
                designation.size(),
                Math.round(designation.taper() * 1e4),
                Math.round(instrument.design().lengthMm() * 100));
    }
}
