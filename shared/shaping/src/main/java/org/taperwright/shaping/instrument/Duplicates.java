package org.taperwright.shaping.instrument;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Likeness.Kind;

/**
 * Finds duplicates and near-duplicates in a catalogue in time that grows as the number of entries: entries are put into
 * groups by keys, never compared in pairs. A group is given as a whole, so that a thousand copies are one line.
 */
public final class Duplicates {
    private static final List<Kind> TEXTS = List.of(Kind.NAME, Kind.TYPE, Kind.MAKER, Kind.LINE, Kind.LOT);

    private final Map<Measure, List<Row>> byMeasure = new LinkedHashMap<>();

    private Duplicates() {}

    /** The duplicates in a catalogue. */
    public static Duplicates in(Map<ThingId, Instrument> catalogue) {
        Map<String, String> folded = new HashMap<>();
        Duplicates duplicates = new Duplicates();
        new TreeMap<>(catalogue)
                .forEach((id, instrument) -> duplicates
                        .byMeasure
                        .computeIfAbsent(Measure.of(instrument), measure -> new ArrayList<>())
                        .add(Row.of(id, instrument, text -> folded.computeIfAbsent(text, FoldedText::of))));
        return duplicates;
    }

    /** All groups: duplicates first, then those that differ in spelling, then in one field. */
    public List<Likeness> all() {
        Map<Kind, List<Likeness>> found = new TreeMap<>();
        for (List<Row> rows : byMeasure.values()) {
            if (rows.size() > 1) {
                collect(rows, found);
            }
        }
        return found.values().stream().flatMap(Collection::stream).toList();
    }

    /** The entries that a new one would be a duplicate or near-duplicate of, by what they are alike in. */
    public Map<Kind, List<ThingId>> of(Instrument fresh) {
        Row row = Row.of(new ThingId("fresh"), fresh, FoldedText::of);
        Map<Kind, List<ThingId>> alike = new TreeMap<>();
        for (Row known : byMeasure.getOrDefault(Measure.of(fresh), List.of())) {
            row.alike(known)
                    .ifPresent(kind -> alike.computeIfAbsent(kind, each -> new ArrayList<>())
                            .add(known.id()));
        }
        return Collections.unmodifiableMap(alike);
    }

    /** What must be equal before anything else is looked at. */
    private record Measure(int size, double taper, Designation.TaperCourse course, long lengthHundredths, Drive drive) {
        static Measure of(Instrument instrument) {
            Designation designation = Designation.of(instrument);
            long length = Math.round(instrument.design().lengthMm() * 100);
            return new Measure(
                    designation.size(), designation.taper(), designation.course(), length, instrument.drive());
        }
    }

    /** An entry's identifying texts, as written and folded, in the order of {@link #TEXTS}, and its make. */
    private record Row(ThingId id, List<String> texts, List<String> folded, String make) {
        static Row of(ThingId id, Instrument entry, Function<String, String> fold) {
            List<String> texts = List.of(
                    entry.name(),
                    entry.type(),
                    entry.maker(),
                    entry.line(),
                    entry.supply().lot());
            String family = entry.design().sections().stream()
                    .findFirst()
                    .map(station -> station.shape().family())
                    .orElse("");
            return new Row(
                    id,
                    texts,
                    texts.stream().map(fold).toList(),
                    family + ' ' + entry.design().alloy());
        }

        /** All but one text, with section and alloy: two names for different sections are no slip of the pen. */
        List<String> without(int field) {
            List<String> rest = new ArrayList<>(folded);
            rest.set(field, "");
            rest.add(make);
            return rest;
        }

        Optional<Kind> alike(Row other) {
            if (texts.equals(other.texts)) {
                return Optional.of(Kind.SAME);
            }
            if (folded.equals(other.folded)) {
                return Optional.of(Kind.SPELLING);
            }
            for (int i = 0; i < TEXTS.size(); i++) {
                if (without(i).equals(other.without(i))) {
                    return Optional.of(TEXTS.get(i));
                }
            }
            return Optional.empty();
        }
    }

    private static void collect(List<Row> rows, Map<Kind, List<Likeness>> found) {
        groups(rows, Row::texts).forEach(group -> add(Kind.SAME, group, found));
        distinct(rows, Row::folded, Row::texts).forEach(group -> add(Kind.SPELLING, group, found));
        for (int i = 0; i < TEXTS.size(); i++) {
            int field = i;
            distinct(rows, row -> row.without(field), row -> row.folded().get(field))
                    .forEach(group -> add(TEXTS.get(field), group, found));
        }
    }

    private static void add(Kind kind, List<Row> group, Map<Kind, List<Likeness>> found) {
        found.computeIfAbsent(kind, each -> new ArrayList<>())
                .add(new Likeness(kind, group.stream().map(Row::id).toList()));
    }

    /** Groups of one key in which something differs. */
    private static List<List<Row>> distinct(
            List<Row> rows, Function<Row, Object> key, Function<Row, Object> difference) {
        return groups(rows, key).stream()
                .filter(group -> {
                    Set<Object> differences = new HashSet<>();
                    group.forEach(row -> differences.add(difference.apply(row)));
                    return differences.size() > 1;
                })
                .toList();
    }

    private static List<List<Row>> groups(List<Row> rows, Function<Row, Object> key) {
        Map<Object, List<Row>> groups = new LinkedHashMap<>();
        rows.forEach(row -> groups.computeIfAbsent(key.apply(row), each -> new ArrayList<>())
                .add(row));
        return groups.values().stream().filter(group -> group.size() > 1).toList();
    }
}
