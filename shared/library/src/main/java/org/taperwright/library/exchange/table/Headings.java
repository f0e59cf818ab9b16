package org.taperwright.library.exchange.table;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.taperwright.mechanics.quantity.Entry;
import org.taperwright.mechanics.quantity.Unit;
import org.taperwright.shaping.instrument.PriceText;

/** Guesses by its heading what a column means, and recognises a table by all of them. */
final class Headings {
    /** Over the column that says why a row was not read; never a field. */
    static final String REASON = "Not read because";

    private static final Pattern BRACKETED = Pattern.compile("^(.*?)\\s*[(\\[]([^)\\]]*)[)\\]]\\s*$");
    private static final Pattern TRAILING = Pattern.compile("^(.*?)[\\s_,/]+(\\S+)\\s*$");

    private Headings() {}

    /** The meaning of each column; each field is given once, to the column that names it best. */
    static List<MappedColumn> guessed(TableKind kind, List<String> headings) {
        Set<String> taken = new HashSet<>();
        List<Optional<MappedColumn>> columns = new ArrayList<>();
        headings.forEach(heading -> columns.add(Optional.empty()));
        for (boolean own : new boolean[] {true, false}) {
            for (int i = 0; i < headings.size(); i++) {
                if (columns.get(i).isEmpty()) {
                    Optional<MappedColumn> guess = guess(kind, headings.get(i), own)
                            .filter(column -> taken.add(column.field().orElseThrow()));
                    columns.set(i, guess);
                }
            }
        }
        List<MappedColumn> guessed = new ArrayList<>();
        for (int i = 0; i < headings.size(); i++) {
            String heading = headings.get(i);
            guessed.add(columns.get(i).orElseGet(() -> new MappedColumn(heading, Optional.empty(), Optional.empty())));
        }
        return guessed;
    }

    private static Optional<MappedColumn> guess(TableKind kind, String heading, boolean own) {
        Optional<TableField> whole = named(kind, heading, own);
        if (whole.isPresent()) {
            return whole.map(field -> new MappedColumn(heading, Optional.of(field.heading()), Optional.empty()));
        }
        for (Pattern pattern : List.of(BRACKETED, TRAILING)) {
            Matcher parts = pattern.matcher(heading);
            if (parts.matches()) {
                Optional<TableField> field = named(kind, parts.group(1), own);
                Optional<String> unit = field.flatMap(each -> unit(each, parts.group(2)));
                if (unit.isPresent()) {
                    return Optional.of(new MappedColumn(heading, field.map(TableField::heading), unit));
                }
            }
        }
        return Optional.empty();
    }

    /** The spelling, if it is a unit for the field. */
    static Optional<String> unit(TableField field, String spelling) {
        if (field.kind() == CellKind.PRICE) {
            return PriceText.currency(spelling);
        }
        Unit asked =
                field.kind() == CellKind.SIZE ? Unit.MILLIMETRE : field.unit().orElse(Unit.NONE);
        boolean fits = field.unit().isPresent()
                && !spelling.isBlank()
                && Entry.read("1 " + spelling, asked, field.heading()) instanceof Entry.Given;
        return fits ? Optional.of(spelling.strip()) : Optional.empty();
    }

    private static Optional<TableField> named(TableKind kind, String heading, boolean own) {
        String folded = folded(heading);
        return kind.fields().stream()
                .filter(field -> own
                        ? folded(field.heading()).equals(folded)
                        : field.others().stream().map(Headings::folded).anyMatch(folded::equals))
                .findFirst();
    }

    /** What tells a table from others: its headings, without the column of reasons. */
    static List<String> fingerprint(List<String> headings) {
        return headings.stream()
                .filter(heading -> !folded(heading).equals(folded(REASON)))
                .map(Headings::folded)
                .toList();
    }

    static boolean reason(String heading) {
        return folded(heading).equals(folded(REASON));
    }

    /** Letters and digits only, in lower case, without accents. */
    static String folded(String heading) {
        return Normalizer.normalize(heading, Normalizer.Form.NFKD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]", "");
    }
}
