package org.taperwright.shaping.limits;

import java.util.List;

/**
 * A section of the page of limits.
 *
 * @param title its heading
 * @param paragraphs running text, one string a paragraph
 * @param table lines of its table, the headings first; empty where it has none
 */
public record LimitSection(String title, List<String> paragraphs, List<List<String>> table) {
    public LimitSection {
        paragraphs = List.copyOf(paragraphs);
        table = table.stream().map(List::copyOf).toList();
    }
}
