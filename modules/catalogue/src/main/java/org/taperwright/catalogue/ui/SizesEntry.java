package org.taperwright.catalogue.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.taperwright.mechanics.design.IsoSizes;

/**
 * Sizes as a person types them: one size, several with commas between, or a range of the standard's series such as
 * {@code 15–40}.
 *
 * @param sizes the sizes meant, none when the text is not understood
 * @param fault what is wrong and what is expected; empty when nothing is
 */
record SizesEntry(List<Integer> sizes, String fault) {
    private static final int LEAST = 6;
    private static final int MOST = 140;
    private static final String EXPECTED =
            "expected a size from 06 to 140, several with commas between, or a range such as 15–40";
    private static final Pattern PART = Pattern.compile("(\\d{1,3})(?:\\s*[-–]\\s*(\\d{1,3}))?");

    SizesEntry {
        sizes = List.copyOf(sizes);
    }

    /** Reads a text. */
    static SizesEntry of(String text) {
        List<Integer> sizes = new ArrayList<>();
        for (String part : text.strip().split("\\s*,\\s*", -1)) {
            Matcher matcher = PART.matcher(part);
            if (!matcher.matches()) {
                return wrong(text);
            }
            int from = Integer.parseInt(matcher.group(1));
            int to = matcher.group(2) == null ? from : Integer.parseInt(matcher.group(2));
            if (from < LEAST || to > MOST || to < from) {
                return wrong(text);
            }
            if (from == to) {
                sizes.add(from);
            } else {
                IsoSizes.sizes().stream()
                        .filter(size -> size >= from && size <= to)
                        .forEach(sizes::add);
            }
        }
        return sizes.isEmpty()
                ? wrong(text)
                : new SizesEntry(sizes.stream().distinct().sorted().toList(), "");
    }

    /** Reads one size or one range for a filter: the two ends, whether the series has them or not; nothing for no text. */
    static SizesEntry range(String text) {
        if (text.isBlank()) {
            return new SizesEntry(List.of(), "");
        }
        Matcher matcher = PART.matcher(text.strip());
        if (!matcher.matches()) {
            return new SizesEntry(
                    List.of(), "“" + text.strip() + "” is not understood; expected a size or a range such as 15–40");
        }
        int from = Integer.parseInt(matcher.group(1));
        int to = matcher.group(2) == null ? from : Integer.parseInt(matcher.group(2));
        return new SizesEntry(List.of(Math.min(from, to), Math.max(from, to)), "");
    }

    private static SizesEntry wrong(String text) {
        return new SizesEntry(List.of(), "“" + text.strip() + "” is not understood; " + EXPECTED);
    }
}
