package org.taperwright.comparer.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.mechanics.design.ThingId;

/**
 * The edits of a saved comparison. Each is a pure function from what stands to what shall stand, with the name that
 * undo shows; an edit that would change nothing, or leave fewer than two or more than six designs, is absent.
 */
final class ComparisonEdits {
    /** Fewest designs compared. */
    static final int LEAST = 2;
    /** Most designs compared: beyond it neither the table nor the figures can be read. */
    static final int MOST = 6;

    /** A named edit: what the comparison becomes. */
    record Edit(String name, SavedComparison after) {}

    private ComparisonEdits() {}

    /** Adds designs at the end, as many as there is room for; those already compared are left out. */
    static Optional<Edit> add(SavedComparison comparison, List<Member> more) {
        List<ThingId> designs = new ArrayList<>(comparison.designs());
        List<String> names = new ArrayList<>();
        for (Member member : more) {
            if (designs.size() < MOST && !designs.contains(member.id())) {
                designs.add(member.id());
                names.add(member.name());
            }
        }
        if (names.isEmpty()) {
            return Optional.empty();
        }
        String others = names.size() == 1 ? "" : " and " + (names.size() - 1) + " more";
        return Optional.of(new Edit("Compare " + names.get(0) + others, with(comparison, designs, comparison.datum())));
    }

    /** Takes a design out; when it was the datum, the first that remains becomes the datum. */
    static Optional<Edit> remove(SavedComparison comparison, ThingId design, String name) {
        if (comparison.designs().size() <= LEAST || !comparison.designs().contains(design)) {
            return Optional.empty();
        }
        List<ThingId> designs = new ArrayList<>(comparison.designs());
        designs.remove(design);
        ThingId datum = comparison.datum().equals(design) ? designs.get(0) : comparison.datum();
        return Optional.of(new Edit("Stop comparing " + name, with(comparison, designs, datum)));
    }

    /** Makes a design the datum. */
    static Optional<Edit> datum(SavedComparison comparison, ThingId design, String name) {
        if (comparison.datum().equals(design) || !comparison.designs().contains(design)) {
            return Optional.empty();
        }
        return Optional.of(new Edit("Datum " + name, with(comparison, comparison.designs(), design)));
    }

    /** Moves a design by places, to the left when negative, as far as the ends allow. */
    static Optional<Edit> move(SavedComparison comparison, ThingId design, int places, String name) {
        int from = comparison.designs().indexOf(design);
        int to = Math.max(0, Math.min(comparison.designs().size() - 1, from + places));
        if (from < 0 || to == from) {
            return Optional.empty();
        }
        List<ThingId> designs = new ArrayList<>(comparison.designs());
        designs.add(to, designs.remove(from));
        String where = to < from ? " to the left" : " to the right";
        return Optional.of(new Edit("Move " + name + where, with(comparison, designs, comparison.datum())));
    }

    /** Renames the comparison. */
    static Optional<Edit> rename(SavedComparison comparison, String name) {
        String trimmed = name.strip();
        if (trimmed.isEmpty() || trimmed.equals(comparison.name())) {
            return Optional.empty();
        }
        return Optional.of(new Edit("Rename comparison to " + trimmed, comparison.named(trimmed)));
    }

    private static SavedComparison with(SavedComparison comparison, List<ThingId> designs, ThingId datum) {
        return comparison.of(designs, datum);
    }
}
