package org.taperwright.command.print;

import java.util.List;
import org.taperwright.command.table.Table;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.work.Fault;

/** Text for people as it grows: a title, parts with headings, tables, and the caution at the end. */
final class Page {
    private static final String CAUTION =
            "Computed values compare and teach. They do not replace the manufacturer's instructions, local rules or\n"
                    + "licensed clinical judgement.";

    private final StringBuilder text = new StringBuilder();

    Page title(String title) {
        text.append(text.isEmpty() ? "" : "\n").append(title).append('\n');
        text.append("=".repeat(title.length())).append('\n');
        return this;
    }

    Page part(String heading) {
        text.append('\n').append(heading).append('\n');
        return this;
    }

    Page line(String line) {
        text.append(line).append('\n');
        return this;
    }

    Page table(Table table) {
        table.lines().forEach(this::line);
        return this;
    }

    /** What the checks found, or that they found nothing. */
    Page remarks(List<Fault> remarks) {
        part("Checks");
        if (remarks.isEmpty()) {
            line("Nothing impossible or unusual.");
        }
        for (Fault fault : remarks) {
            line((fault.weight() == Fault.Weight.IMPOSSIBLE ? "impossible  " : "unusual     ") + fault.sentence());
        }
        return this;
    }

    /** The whole text, below it what the standings mean and the caution. */
    String finished() {
        text.append('\n');
        for (Standing standing : Standing.values()) {
            line(String.format("%-9s %s", standing.word(), standing.meaning()));
        }
        return text + "\n" + CAUTION + "\n";
    }

    /** The caution as one line, for JSON. */
    static String caution() {
        return CAUTION.replace('\n', ' ');
    }
}
