package org.taperwright.designer.ui;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where in the form a fault's field stands: the form's words for it, and the component that enters it. */
record FieldPlace(String words, String component) {
    private static final Pattern INDEXED = Pattern.compile("(\\w+)\\[(\\d+)](.*)");
    private static final Map<String, FieldPlace> PLAIN = Map.ofEntries(
            Map.entry("name", new FieldPlace("Name", "design.name")),
            Map.entry("note", new FieldPlace("Note", "design.note")),
            Map.entry("tipDiameterMm", new FieldPlace("Tip diameter", "design.tipDiameter.text")),
            Map.entry("shaftDiameterMm", new FieldPlace("Shaft diameter", "design.shaft.text")),
            Map.entry("lengthMm", new FieldPlace("Length", "design.length.text")),
            Map.entry("taper", new FieldPlace("Taper", "design.taper.table")),
            Map.entry("sections", new FieldPlace("Section", "design.section.family")),
            Map.entry("flutes", new FieldPlace("Flutes", "design.flutes.table")),
            Map.entry("hand", new FieldPlace("Turning sense", "design.hand")),
            Map.entry("tip", new FieldPlace("Tip", "design.tipKind")),
            Map.entry("alloy", new FieldPlace("Alloy", "design.alloy")),
            Map.entry("making", new FieldPlace("Making", "design.making")),
            Map.entry("motion", new FieldPlace("Motion", "design.motion")));
    private static final Map<String, String> ROWS =
            Map.of("taper", "Taper segment ", "sections", "Section ", "flutes", "Flute station ");
    private static final List<String> SILENT = List.of("", "shape", "parameters", "taper");

    /** The place of a field given in the words of the JSON form. */
    static FieldPlace of(String where) {
        Matcher indexed = INDEXED.matcher(where);
        if (indexed.matches() && ROWS.containsKey(indexed.group(1))) {
            int number = Integer.parseInt(indexed.group(2)) + 1;
            String rest = detail(indexed.group(3));
            String words = ROWS.get(indexed.group(1)) + number + (rest.isEmpty() ? "" : ", " + rest);
            return new FieldPlace(words, PLAIN.get(indexed.group(1)).component());
        }
        String first = where.contains(".") ? where.substring(0, where.indexOf('.')) : where;
        FieldPlace plain = PLAIN.get(first);
        return plain == null ? new FieldPlace(spaced(where), "design.name") : plain;
    }

    /** The form's words for a field given in the words of the JSON form. */
    static String words(String where) {
        return of(where).words();
    }

    private static String detail(String path) {
        StringBuilder words = new StringBuilder();
        for (String part : path.split("\\.")) {
            if (!SILENT.contains(part)) {
                words.append(words.length() == 0 ? "" : " ").append(spaced(part));
            }
        }
        return words.toString();
    }

    /** {@code coreDiameter} as "core diameter", without a unit at its end. */
    private static String spaced(String camel) {
        return camel.replaceAll("(Mm|Deg)$", "")
                .replaceAll("([a-z])([A-Z])", "$1 $2")
                .toLowerCase(Locale.ROOT);
    }
}
