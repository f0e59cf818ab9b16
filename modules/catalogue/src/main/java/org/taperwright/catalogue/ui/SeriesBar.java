package org.taperwright.catalogue.ui;

import java.awt.BorderLayout;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.text.JTextComponent;
import org.taperwright.mechanics.quantity.Unit;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.shaping.instrument.SizeSeries;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.RowLabel;
import org.taperwright.workbench.ui.ShrinkingRow;
import org.taperwright.workbench.ui.SizeChip;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.TextChanges;

/**
 * New instruments from little: sizes, tapers, type and lengths fill the rest. What would be added, and how many, is shown
 * before anything is.
 */
final class SeriesBar extends JPanel {
    private static final String PLAIN_TYPE = "K-type file";
    private static final String ROOM = "K-type file, square";
    private static final int MOST_ROOM = 32;

    private final transient Desk desk;
    private final transient Supplier<InstrumentList> list;
    private final transient Consumer<SeriesPreview> enter;
    private final JTextField sizes = field("entry.sizes", "Sizes", "25", 4);
    private final JTextField tapers = field("entry.tapers", "Tapers", ".02", 4);
    private final JTextField lengths = field("entry.lengths", "Lengths", "25", 4);
    private final JComboBox<String> type = new JComboBox<>(new String[] {PLAIN_TYPE});
    private final JButton add = new JButton("Add");
    private final RowLabel outcome = new RowLabel(" ");
    private final transient Object adding = new Object();
    private transient List<String> offered = List.of(PLAIN_TYPE);

    /**
     * Makes the bar.
     *
     * @param list the library's instruments
     * @param enter receives what is to be added
     */
    SeriesBar(Desk desk, Supplier<InstrumentList> list, Consumer<SeriesPreview> enter) {
        super(new BorderLayout(0, Spacing.TIGHT));
        this.desk = desk;
        this.list = list;
        this.enter = enter;
        setName("instruments.entry");
        setOpaque(false);
        sizes.setToolTipText("A size such as 25, several with commas between, or a range such as 15–40");
        tapers.setToolTipText("A taper such as .04, or several with commas between");
        lengths.setToolTipText("A length such as 25, or several with commas between, mm");
        type.setName("entry.type");
        type.setEditable(true);
        type.setPrototypeDisplayValue(ROOM);
        type.getAccessibleContext().setAccessibleName("Type");
        type.setToolTipText("The trade's type; the design is assumed from the nearest known instrument of this type");
        add.setName("entry.add");
        add.setToolTipText("Adds to the library what stands beneath");
        outcome.setName("entry.outcome");
        add.addActionListener(event -> add());
        for (JTextField each : List.of(sizes, tapers, lengths)) {
            each.addActionListener(event -> add());
            TextChanges.each(each, this::describe);
        }
        type.addActionListener(event -> describe());
        if (type.getEditor().getEditorComponent() instanceof JTextComponent text) {
            text.setName("entry.type.text");
            TextChanges.each(text, this::describe);
        }
        JPanel fields = new JPanel(new ShrinkingRow(Spacing.NEAR));
        fields.setOpaque(false);
        labelled(fields, "New sizes", sizes);
        labelled(fields, "tapers", tapers);
        labelled(fields, "type", type);
        labelled(fields, "lengths", lengths);
        fields.add(add);
        add(fields, BorderLayout.CENTER);
        add(outcome, BorderLayout.SOUTH);
    }

    private static JTextField field(String name, String what, String text, int columns) {
        JTextField field = new JTextField(text, columns);
        field.setName(name);
        field.getAccessibleContext().setAccessibleName(what);
        return field;
    }

    private static void labelled(JPanel row, String words, JComponent field) {
        row.add(new RowLabel(words, field));
        row.add(field);
    }

    /** Offers the types that the library's instruments have, or the plainest in an empty one, and says anew what would be added. */
    void refresh() {
        List<String> found = list.get().choices().types();
        List<String> types = found.isEmpty() ? List.of(PLAIN_TYPE) : found;
        if (!types.equals(offered)) {
            String typed = type();
            String kept = typed.isEmpty() || typed.equals(PLAIN_TYPE) ? likeliest(types) : typed;
            offered = types;
            type.setModel(new DefaultComboBoxModel<>(types.toArray(String[]::new)));
            type.setSelectedItem(kept);
            type.setPrototypeDisplayValue(longest(types));
        }
        describe();
    }

    /** What the field must have room for, so that no type is cut; of very long ones a part. */
    private static String longest(List<String> types) {
        String longest =
                types.stream().max(Comparator.comparingInt(String::length)).orElse(ROOM);
        return longest.length() < ROOM.length() ? ROOM : longest.substring(0, Math.min(MOST_ROOM, longest.length()));
    }

    /** The first K-type file, or whatever comes first. */
    private static String likeliest(List<String> types) {
        return types.stream()
                .filter(word -> word.startsWith(PLAIN_TYPE))
                .findFirst()
                .orElse(types.get(0));
    }

    private String type() {
        Object typed = type.getEditor().getItem();
        return typed == null ? "" : typed.toString().strip();
    }

    private Optional<SizeSeries> series() {
        SizesEntry readSizes = SizesEntry.of(sizes.getText());
        NumbersEntry readTapers = readTapers();
        NumbersEntry readLengths = readLengths();
        boolean read = readSizes.fault().isEmpty()
                && readTapers.fault().isEmpty()
                && readLengths.fault().isEmpty();
        return read
                ? Optional.of(new SizeSeries(type(), readSizes.sizes(), readTapers.numbers(), readLengths.numbers()))
                : Optional.empty();
    }

    private NumbersEntry readTapers() {
        return NumbersEntry.of(tapers.getText(), Unit.NONE, "tapers such as .02, .04");
    }

    private NumbersEntry readLengths() {
        return NumbersEntry.of(lengths.getText(), Unit.MILLIMETRE, "lengths in mm such as 21, 25");
    }

    private void describe() {
        String fault = mark(sizes, SizesEntry.of(sizes.getText()).fault());
        String taperFault = mark(tapers, readTapers().fault());
        String lengthFault = mark(lengths, readLengths().fault());
        Optional<SizeSeries> series = series();
        if (series.isEmpty()) {
            say(fault.isEmpty() ? taperFault.isEmpty() ? lengthFault : taperFault : fault, Optional.empty(), false);
        }
        SizeSeries wanted = series.orElse(new SizeSeries("", List.of(), List.of(), List.of()));
        desk.compute(this, "Working out what would be added", SeriesPreview.of(wanted, list.get()), done -> {
            if (series.isPresent() && done instanceof Outcome.Current<SeriesPreview> current) {
                SeriesPreview preview = current.value();
                say(preview.words(), preview.colour(), preview.possible());
            }
        });
    }

    private static String mark(JTextField field, String fault) {
        field.putClientProperty("JComponent.outline", fault.isEmpty() ? null : "error");
        return fault;
    }

    private void say(String words, Optional<String> colour, boolean possible) {
        add.setEnabled(possible);
        outcome.tone(possible ? Ink::text : Ink::fault);
        outcome.setText(words);
        outcome.setToolTipText(words);
        outcome.setIcon(colour.map(SizeChip::new).orElse(null));
    }

    /** Adds what the fields say now, whatever preview may still be on its way. */
    private void add() {
        series().ifPresent(series ->
                desk.compute(adding, "Adding instruments", SeriesPreview.of(series, list.get()), done -> {
                    if (done instanceof Outcome.Current<SeriesPreview> current
                            && current.value().possible()) {
                        enter.accept(current.value());
                    }
                }));
    }
}
