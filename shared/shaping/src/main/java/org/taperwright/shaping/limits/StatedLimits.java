package org.taperwright.shaping.limits;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The page of limits by section, so that it need not be written twice. */
public final class StatedLimits {
    private static final String PAGE = "LIMITS.md";

    private StatedLimits() {}

    /** The sections of the page, that before the first heading under the page's own title. */
    public static List<LimitSection> sections() {
        try (InputStream page = StatedLimits.class.getResourceAsStream(PAGE)) {
            if (page == null) {
                throw new IllegalStateException(PAGE + " is not packed with the engine");
            }
            return sections(new String(page.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException fault) {
            throw new UncheckedIOException(PAGE + " cannot be read", fault);
        }
    }

    /** The sections of a page: headings by {@code #}, tables by bars, paragraphs between empty lines. */
    static List<LimitSection> sections(String page) {
        List<LimitSection> sections = new ArrayList<>();
        for (String part : page.split("(?m)^#+ ")) {
            if (!part.isBlank()) {
                sections.add(section(part));
            }
        }
        return sections;
    }

    private static LimitSection section(String part) {
        List<String> paragraphs = new ArrayList<>();
        List<List<String>> table = new ArrayList<>();
        StringBuilder paragraph = new StringBuilder();
        String[] lines = part.split("\\R");
        for (int i = 1; i < lines.length; i++) {
            String line = lines[i].strip();
            if (line.startsWith("|")) {
                if (!line.matches("[|\\s-]+")) {
                    table.add(cells(line));
                }
            } else if (line.isEmpty()) {
                end(paragraph, paragraphs);
            } else {
                paragraph.append(paragraph.length() == 0 ? "" : " ").append(plain(line));
            }
        }
        end(paragraph, paragraphs);
        return new LimitSection(lines[0].strip(), paragraphs, table);
    }

    private static void end(StringBuilder paragraph, List<String> paragraphs) {
        if (paragraph.length() > 0) {
            paragraphs.add(paragraph.toString());
            paragraph.setLength(0);
        }
    }

    private static List<String> cells(String line) {
        return Arrays.stream(line.substring(1, line.length() - 1).split("\\|"))
                .map(cell -> plain(cell.strip()))
                .toList();
    }

    private static String plain(String text) {
        return text.replace("`", "").replace("*", "");
    }
}
