package org.taperwright.shaping.kit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.shaping.instrument.Designation;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.kit.Coverage.Match;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Step;

/** What a kit has: sizes, tapers and lengths, and for each sequence what is present and what is missing. */
public final class Coverages {
    private static final double ALIKE = 1e-9;

    private Coverages() {}

    /**
     * A size, taper and length, in this order when sorted.
     *
     * @param size hundredths of a millimetre at the tip
     * @param taper at the tip, mm/mm
     * @param lengthMm from tip to handle
     */
    public record Extent(int size, double taper, double lengthMm) implements Comparable<Extent> {
        static Extent of(Instrument instrument) {
            Designation designation = Designation.of(instrument);
            return new Extent(
                    designation.size(), designation.taper(), instrument.design().lengthMm());
        }

        /** As written: {@code 25/.04, 25 mm}. */
        public String text() {
            return Shown.designation(size, taper) + ", " + Shown.mm(lengthMm);
        }

        @Override
        public int compareTo(Extent other) {
            int bySize = Integer.compare(size, other.size);
            int byTaper = bySize != 0 ? bySize : Double.compare(taper, other.taper);
            return byTaper != 0 ? byTaper : Double.compare(lengthMm, other.lengthMm);
        }
    }

    /** How many pieces in use the kit has of each size, taper and length; pieces without an entry are not counted. */
    public static Map<Extent, Integer> extents(Kit kit, Map<ThingId, Instrument> catalogue) {
        Map<Extent, Integer> extents = new TreeMap<>();
        for (Piece piece : kit.inUse()) {
            Optional.ofNullable(catalogue.get(piece.instrument()))
                    .ifPresent(entry -> extents.merge(Extent.of(entry), 1, Integer::sum));
        }
        return extents;
    }

    /** The sizes, tapers and lengths that the steps of some sequences ask for, each with the sequences' names. */
    public static Map<Extent, List<String>> wanted(Collection<Sequence> sequences, Map<ThingId, Instrument> catalogue) {
        Map<Extent, List<String>> wanted = new TreeMap<>();
        for (Sequence sequence : sequences) {
            sequence.steps().stream()
                    .flatMap(step -> step.uses().stream())
                    .flatMap(used -> Optional.ofNullable(catalogue.get(used)).stream())
                    .map(Extent::of)
                    .distinct()
                    .forEach(extent -> wanted.computeIfAbsent(extent, each -> new ArrayList<>())
                            .add(sequence.name()));
        }
        return wanted;
    }

    /** For each sequence whether the kit has what it needs; one piece serves all steps that take it. */
    public static List<Coverage> of(Kit kit, Map<ThingId, Instrument> catalogue, Map<ThingId, Sequence> sequences) {
        List<Coverage> coverages = new ArrayList<>();
        sequences.forEach((id, sequence) -> {
            List<Coverage.Step> steps = new ArrayList<>();
            for (int i = 0; i < sequence.steps().size(); i++) {
                Step step = sequence.steps().get(i);
                int place = i + 1;
                step.uses().ifPresent(used -> steps.add(step(place, used, step.depthMm(0), kit, catalogue)));
            }
            coverages.add(new Coverage(id, sequence.name(), steps));
        });
        return coverages;
    }

    /** A step of a depth of its own, mm; where it follows from a working length that is not asked here, the way beyond it. */
    private static Coverage.Step step(
            int place, ThingId used, double depthMm, Kit kit, Map<ThingId, Instrument> catalogue) {
        List<String> same = pieces(kit, piece -> piece.instrument().equals(used));
        Optional<Instrument> entry = Optional.ofNullable(catalogue.get(used));
        String wanted = entry.map(Coverages::text).orElse(used.value());
        if (!same.isEmpty()) {
            return new Coverage.Step(place, wanted, Match.SAME, same);
        }
        if (entry.isEmpty()) {
            return new Coverage.Step(place, wanted, Match.UNKNOWN, List.of());
        }
        List<String> alike = pieces(
                kit,
                piece -> Optional.ofNullable(catalogue.get(piece.instrument()))
                        .filter(other -> alike(other, entry.get(), depthMm))
                        .isPresent());
        return new Coverage.Step(place, wanted, alike.isEmpty() ? Match.MISSING : Match.ALIKE, alike);
    }

    private static List<String> pieces(Kit kit, Predicate<Piece> wanted) {
        return kit.inUse().stream().filter(wanted).map(Piece::id).toList();
    }

    private static boolean alike(Instrument other, Instrument entry, double depthMm) {
        Designation one = Designation.of(other);
        Designation two = Designation.of(entry);
        return one.size() == two.size()
                && Math.abs(one.taper() - two.taper()) < ALIKE
                && one.course() == two.course()
                && other.drive() == entry.drive()
                && other.design().motion() == entry.design().motion()
                && other.design().lengthMm() >= depthMm;
    }

    private static String text(Instrument entry) {
        String extent = Extent.of(entry).text();
        String designation = Designation.of(entry).text();
        return entry.name().contains(designation)
                ? entry.name() + ", " + Shown.mm(entry.design().lengthMm())
                : entry.name() + ", " + extent;
    }
}
