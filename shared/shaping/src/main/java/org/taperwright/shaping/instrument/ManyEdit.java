package org.taperwright.shaping.instrument;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Fault.Weight;

/**
 * The same fields set to the same values in many catalogue entries at once.
 *
 * @param changes in the order they are made
 */
public record ManyEdit(List<FieldChange> changes) {
    public ManyEdit {
        changes = List.copyOf(changes);
    }

    /**
     * What came of it.
     *
     * @param changed the entries that differ afterwards; those with an impossible fault stay as they were and are not here
     * @param faults for each entry what the edit brought about that is impossible or unusual
     */
    public record Outcome(Map<ThingId, Instrument> changed, Map<ThingId, List<Fault>> faults) {}

    /** The edit's name, such as "Supplier and lot of 12 instruments". */
    public String name(int entries) {
        String fields = changes.stream().map(FieldChange::field).distinct().collect(Collectors.joining(", "));
        String capital = fields.isEmpty() ? "Nothing" : Character.toUpperCase(fields.charAt(0)) + fields.substring(1);
        return capital + " of " + entries + (entries == 1 ? " instrument" : " instruments");
    }

    /** The entries changed, checked as of a day. */
    public Outcome in(Map<ThingId, Instrument> entries, LocalDate today) {
        Map<ThingId, Instrument> changed = new LinkedHashMap<>();
        Map<ThingId, List<Fault>> faults = new LinkedHashMap<>();
        entries.forEach((id, before) -> {
            List<Fault> brought = new ArrayList<>();
            Instrument after = before;
            for (FieldChange change : changes) {
                try {
                    after = change.of(after);
                } catch (IllegalArgumentException refused) {
                    brought.add(Fault.impossible(
                            change.field(), String.valueOf(refused.getMessage()), "expected another value"));
                }
            }
            brought.addAll(InstrumentChecks.check(after, today));
            brought.removeAll(InstrumentChecks.check(before, today));
            if (!brought.isEmpty()) {
                faults.put(id, List.copyOf(brought));
            }
            boolean possible = brought.stream().noneMatch(fault -> fault.weight() == Weight.IMPOSSIBLE);
            if (possible && !after.equals(before)) {
                changed.put(id, after);
            }
        });
        return new Outcome(changed, faults);
    }
}
