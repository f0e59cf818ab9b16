package org.taperwright.shaping.instrument;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.IsoSizes;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;

/**
 * New catalogue entries from little: one for each size, taper and length. Their design is assumed by type: from the known
 * entry of that type that is nearest in size, or from the standard's plain design when there is none. Sizes and lengths by
 * ISO 3630-1, see {@link IsoSizes}.
 *
 * @param type the trade's type
 * @param sizes hundredths of a millimetre at the tip
 * @param tapers each over the whole working part, mm/mm
 * @param lengthsMm from tip to handle, mm
 */
public record SizeSeries(String type, List<Integer> sizes, List<Double> tapers, List<Double> lengthsMm) {
    /** Most entries made at once. */
    public static final int MOST = 5000;

    private static final double PER_MM = 100;

    public SizeSeries {
        sizes = List.copyOf(sizes);
        tapers = List.copyOf(tapers);
        lengthsMm = List.copyOf(lengthsMm);
    }

    /** The sizes of the standard's series from one to another, both included. */
    public static List<Integer> sizesBetween(int least, int most) {
        return IsoSizes.sizes().stream()
                .filter(size -> size >= least && size <= most)
                .toList();
    }

    /** How many entries it makes. */
    public int count() {
        return (int) Math.min(Integer.MAX_VALUE, (long) sizes.size() * tapers.size() * lengthsMm.size());
    }

    /** What is impossible or unusual; entries can be made when nothing is impossible. */
    public List<Fault> faults() {
        List<Fault> faults = new ArrayList<>();
        if (type.isBlank()) {
            faults.add(Fault.impossible("type", "nothing is entered", "expected a type, such as K-type file"));
        }
        if (count() == 0 || count() > MOST) {
            faults.add(Fault.impossible("sizes", "would make " + count() + " instruments", "expected 1 to " + MOST));
        }
        sizes.forEach(size -> check(size, faults));
        tapers.forEach(taper -> checkTaper(taper, faults));
        lengthsMm.forEach(length -> checkLength(length, faults));
        return faults;
    }

    private static void check(int size, List<Fault> faults) {
        if (size < 1 || size > 2000) {
            faults.add(Fault.impossible("sizes", "size " + size + " is none", "expected 1 to 2000"));
        } else if (IsoSizes.find(size).isEmpty()) {
            faults.add(Fault.unusual(
                    "sizes",
                    "the standard's series has no size " + IsoSizes.text(size),
                    "expected one of 06, 08, 10, 15 to 60 by 5, 70 to 140 by 10"));
        }
    }

    private static void checkTaper(double taper, List<Fault> faults) {
        if (!(taper >= 0 && taper <= 1)) {
            faults.add(Fault.impossible(
                    "tapers", "a taper of " + Shown.number(taper) + " is none", "expected 0 to 1 mm per mm"));
        }
    }

    private static void checkLength(double length, List<Fault> faults) {
        if (!(length > 0 && length <= 200)) {
            faults.add(Fault.impossible(
                    "lengthsMm", "a length of " + Shown.mm(length) + " is none", "expected up to 200 mm"));
        } else if (!IsoSizes.lengthsMm().contains(length)) {
            faults.add(Fault.unusual(
                    "lengthsMm",
                    "the standard has no length of " + Shown.mm(length),
                    "expected 21, 25, 28 or 31 mm, or the maker's own"));
        }
    }

    /**
     * The entries by size, then taper, then length.
     *
     * @param known entries from which designs are assumed
     * @throws IllegalStateException if one of the {@link #faults} is impossible
     */
    public List<Instrument> instruments(Collection<Instrument> known) {
        if (faults().stream().anyMatch(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE)) {
            throw new IllegalStateException("a series with faults was to be made");
        }
        List<Instrument> models =
                known.stream().filter(each -> each.type().equals(type)).toList();
        List<Instrument> made = new ArrayList<>();
        for (int size : sizes) {
            Optional<Instrument> model = nearest(size, models);
            for (double taper : tapers) {
                for (double length : lengthsMm) {
                    made.add(instrument(size, taper, length, model));
                }
            }
        }
        return made;
    }

    private static Optional<Instrument> nearest(int size, List<Instrument> models) {
        return models.stream()
                .min(Comparator.comparingInt((Instrument model) -> Math.abs(model.size() - size))
                        .thenComparing(Instrument::name));
    }

    private Instrument instrument(int size, double taper, double length, Optional<Instrument> model) {
        Design like = model.map(Instrument::design).orElseGet(() -> Designs.standard(size, taper));
        String name = type + ' ' + Shown.designation(size, taper);
        Design design = Designs.with(like)
                .name(name)
                .note("")
                .tipDiameterMm(size / PER_MM)
                .taper(List.of(new TaperSegment(0, Math.min(like.workingPartMm(), length), taper)))
                .shaftDiameterMm(OptionalDouble.empty())
                .lengthMm(length)
                .design();
        return new Instrument(
                name,
                "",
                "",
                type,
                model.map(Instrument::drive).orElse(Drive.HAND),
                design,
                Optional.empty(),
                true,
                Optional.empty(),
                Optional.empty(),
                0,
                model.map(found -> "Design assumed from " + found.name())
                        .orElse("Design assumed: the standard's plain design"));
    }
}
