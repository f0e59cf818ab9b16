package org.taperwright.library.exchange.table;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.taperwright.library.exchange.csv.CsvCell;
import org.taperwright.library.exchange.csv.CsvText;
import org.taperwright.library.exchange.json.Node;
import org.taperwright.library.exchange.json.Place;
import org.taperwright.library.exchange.json.Spelling;
import org.taperwright.mechanics.work.Fault;

/** Reads the cells of one column as values of its field's form. */
final class CellReading {
    private static final Set<String> YES = Set.of("yes", "true", "y", "1", "x");
    private static final Set<String> NO = Set.of("no", "false", "n", "0");
    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})");
    private static final Pattern DAY_FIRST = Pattern.compile("(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4})");
    private static final Pattern RANGE = Pattern.compile("(.*?[0-9.,])\\s*(?:-|–|—|\\bto\\b|\\.\\.\\.)\\s*([0-9.,].*)");

    private final TableField field;
    private final Optional<String> unit;
    private final char decimal;
    private final CellNumbers numbers;

    CellReading(TableField field, Optional<String> unit, char decimal) {
        this.field = field;
        this.unit = unit;
        this.decimal = decimal;
        this.numbers = new CellNumbers(field, unit, decimal);
    }

    /** What came of reading a cell. */
    sealed interface Found {}

    record Nothing() implements Found {}

    /**
     * A value.
     *
     * @param node in the form's shape
     * @param doubt what is wrong with it unless the thing has it already
     */
    record Value(Node node, Optional<Fault> doubt) implements Found {
        Value(Node node) {
            this(node, Optional.empty());
        }
    }

    record Faulty(Fault fault) implements Found {}

    TableField field() {
        return field;
    }

    Found read(CsvCell cell) {
        String text = CsvText.of(cell);
        boolean blank = field.kind() == CellKind.TEXT ? text.isEmpty() : text.isBlank();
        if (blank) {
            return new Nothing();
        }
        String bare = text.strip();
        return switch (field.kind()) {
            case TEXT -> new Value(new Node.TextNode(cell.place(), text));
            case WORD -> word(cell.place(), bare);
            case FLAG -> flag(cell.place(), bare);
            case DATE -> date(cell.place(), bare);
            case NUMBER -> number(cell.place(), bare, numbers.number(bare));
            case SIZE -> number(cell.place(), bare, numbers.size(bare));
            case TAPER -> number(cell.place(), bare, numbers.taper(bare));
            case PRICE -> price(cell.place(), bare);
            case RANGE -> range(cell.place(), bare);
        };
    }

    private Found number(Place place, String text, Optional<Double> value) {
        return value.<Found>map(each -> new Value(node(place, each))).orElseGet(() -> faulty(text, numbers.expected()));
    }

    private Found price(Place place, String text) {
        return CellPrices.read(place, text, numbers, unit)
                .<Found>map(Value::new)
                .orElseGet(
                        () -> faulty(text, "expected a price, such as 12" + decimal + "50 or 12" + decimal + "50 EUR"));
    }

    private static Node node(Place place, double value) {
        return new Node.NumberNode(place, CellNumbers.written(value), value);
    }

    private Found word(Place place, String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        String word = field.words().get(lower);
        if (word != null) {
            return new Value(new Node.TextNode(place, word));
        }
        String meant = Spelling.nearest(lower, field.words().keySet())
                .map(near -> " (perhaps \"" + near + "\")")
                .orElse("");
        String expected = "expected one of "
                + String.join(", ", new TreeSet<>(field.words().values())) + meant;
        return new Value(new Node.TextNode(place, text), Optional.of(fault(text, expected)));
    }

    private Found flag(Place place, String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        if (YES.contains(lower) || NO.contains(lower)) {
            return new Value(new Node.FlagNode(place, YES.contains(lower)));
        }
        return faulty(text, "expected yes or no");
    }

    /** Year first, or day first with points; slashes are refused, for nobody can tell the day from the month. */
    private Found date(Place place, String text) {
        Matcher year = YEAR_FIRST.matcher(text);
        Matcher day = DAY_FIRST.matcher(text);
        Optional<LocalDate> date = Optional.empty();
        if (year.matches()) {
            date = date(year.group(1), year.group(2), year.group(3));
        } else if (day.matches()) {
            date = date(day.group(3), day.group(2), day.group(1));
        }
        return date.<Found>map(each -> new Value(new Node.TextNode(place, each.toString())))
                .orElseGet(() -> faulty(text, "expected a date, year first, such as 2027-03-31"));
    }

    private static Optional<LocalDate> date(String year, String month, String day) {
        try {
            return Optional.of(LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day)));
        } catch (DateTimeException notInTheCalendar) {
            return Optional.empty();
        }
    }

    private Found range(Place place, String text) {
        Matcher range = RANGE.matcher(text);
        Optional<Double> least;
        Optional<Double> most;
        if (range.matches()) {
            most = numbers.number(range.group(2));
            // the first end of "1-2 N·cm" has the unit of the second
            least = numbers.number(range.group(1) + CellNumbers.unitOf(range.group(2)));
        } else {
            least = numbers.number(text);
            most = least;
        }
        if (least.isEmpty() || most.isEmpty()) {
            return faulty(text, numbers.expected() + ", or two with a dash between them");
        }
        Map<String, Node.Member> members = new LinkedHashMap<>();
        members.put("least", new Node.Member(place, node(place, least.get())));
        members.put("most", new Node.Member(place, node(place, most.get())));
        return new Value(new Node.ObjectNode(place, members));
    }

    private Found faulty(String text, String expected) {
        return new Faulty(fault(text, expected));
    }

    private Fault fault(String text, String expected) {
        String found = new Node.TextNode(Place.START, text).described();
        return Fault.impossible(field.heading(), "found " + found, expected);
    }
}
