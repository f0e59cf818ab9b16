package org.taperwright.catalogue.ui;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.SizeColour;
import org.taperwright.shaping.instrument.Designation;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.QuantityField;
import org.taperwright.workbench.ui.QuantityKind;
import org.taperwright.workbench.ui.ShrinkingRow;
import org.taperwright.workbench.ui.SizeChip;
import org.taperwright.workbench.ui.Spacing;

/** Quick entry of instruments: size and taper fill the rest, which is shown before anything is added. */
final class QuickEntryBar extends JPanel {
    private static final List<Double> LENGTHS = List.of(21.0, 25.0, 28.0, 31.0);
    private static final String PLAIN_TYPE = "K-type file";
    private static final double STANDARD_TAPER = 0.02;

    private final JTextField sizes = new JTextField("25", 6);
    private final QuantityField taper = new QuantityField("entry.taper", "Taper", QuantityKind.taper());
    private final ChoiceField<String> type = new ChoiceField<>("entry.type", "Type", List.of(PLAIN_TYPE), word -> word);
    private final ChoiceField<Double> length =
            new ChoiceField<>("entry.length", "Length", LENGTHS, value -> String.format(Locale.ROOT, "%.0f mm", value));
    private final JButton add = new JButton("Add");
    private final JLabel outcome = new JLabel(" ");
    private final transient Supplier<List<InstrumentRow>> known;

    /**
     * Makes the bar.
     *
     * @param known the library's instruments
     * @param enter receives what is to be added
     */
    QuickEntryBar(Supplier<List<InstrumentRow>> known, Consumer<QuickEntry> enter) {
        super(new BorderLayout(0, Spacing.TIGHT));
        this.known = known;
        setName("instruments.entry");
        setOpaque(false);
        sizes.setName("entry.sizes");
        sizes.getAccessibleContext().setAccessibleName("Sizes");
        sizes.setToolTipText("A size such as 25, several with commas between, or a range such as 15–40");
        taper.setValue(STANDARD_TAPER);
        length.setValue(LENGTHS.get(1));
        add.setName("entry.add");
        add.setToolTipText("Adds to the library what stands beside");
        outcome.setName("entry.outcome");
        Runnable commit = () -> entry().ifPresent(enter);
        sizes.addActionListener(event -> commit.run());
        add.addActionListener(event -> commit.run());
        taper.onPreview(value -> describe()).onCommit(value -> describe());
        type.onCommit(value -> describe());
        length.onCommit(value -> describe());
        sizes.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                describe();
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                describe();
            }

            @Override
            public void changedUpdate(DocumentEvent event) {
                describe();
            }
        });
        JPanel fields = new JPanel(new ShrinkingRow(Spacing.NEAR));
        fields.setOpaque(false);
        labelled(fields, "New: size", sizes);
        labelled(fields, "taper", taper);
        labelled(fields, "type", type);
        labelled(fields, "length", length);
        fields.add(add);
        add(fields, BorderLayout.CENTER);
        add(outcome, BorderLayout.SOUTH);
        describe();
    }

    private static void labelled(JPanel row, String words, JComponent field) {
        JLabel label = new JLabel(words);
        label.setLabelFor(field instanceof QuantityField quantity ? quantity.entry() : field);
        row.add(label);
        row.add(field);
    }

    /** Offers the types that the library's instruments have, or the plainest in an empty one, and says anew what would be added. */
    void refresh() {
        List<String> found = known.get().stream()
                .map(row -> row.instrument().type())
                .filter(word -> !word.isBlank())
                .distinct()
                .sorted(NaturalOrder.OF_NAMES)
                .toList();
        List<String> types = found.isEmpty() ? List.of(PLAIN_TYPE) : found;
        Object before = type.getSelectedItem();
        type.setChoices(types);
        if (type.getSelectedItem() == null) {
            type.setValue(types.contains(String.valueOf(before)) ? String.valueOf(before) : likeliest(types));
        }
        describe();
    }

    /** The first K-type file, or whatever comes first. */
    private static String likeliest(List<String> types) {
        return types.stream()
                .filter(word -> word.startsWith(PLAIN_TYPE))
                .findFirst()
                .orElse(types.get(0));
    }

    private Optional<QuickEntry> entry() {
        SizesEntry read = SizesEntry.of(sizes.getText());
        if (read.sizes().isEmpty() || type.getSelectedIndex() < 0) {
            return Optional.empty();
        }
        return Optional.of(new QuickEntry(
                        read.sizes(),
                        taper.value(),
                        type.getItemAt(type.getSelectedIndex()),
                        length.getItemAt(length.getSelectedIndex())))
                .filter(QuickEntry::possible);
    }

    private void describe() {
        SizesEntry read = SizesEntry.of(sizes.getText());
        Optional<QuickEntry> entry = entry();
        add.setEnabled(entry.isPresent());
        outcome.setForeground(read.fault().isEmpty() ? Ink.text() : Ink.fault());
        sizes.putClientProperty("JComponent.outline", read.fault().isEmpty() ? null : "error");
        String words = entry.map(this::words).orElse(read.fault());
        outcome.setText(words);
        outcome.setToolTipText(words);
        outcome.setIcon(entry.filter(e -> e.sizes().size() == 1)
                .map(e -> Designation.of(e.instrument(e.sizes().get(0), known.get()))
                        .colour()
                        .map(SizeColour::word)
                        .orElse(""))
                .map(SizeChip::new)
                .orElse(null));
    }

    private String words(QuickEntry entry) {
        Design first = entry.instrument(entry.sizes().get(0), known.get()).design();
        Designation designation = Designation.of(first);
        String colour = designation.colour().map(SizeColour::word).orElse("no colour in the standard");
        String what = entry.sizes().size() == 1
                ? String.format(
                        Locale.ROOT,
                        "%s, %s; %.2f, %.2f, %.2f mm at 1, 3, %.0f mm",
                        designation.text(),
                        colour,
                        first.diameterMm(1),
                        first.diameterMm(3),
                        first.diameterMm(first.workingPartMm()),
                        first.workingPartMm())
                : entry.sizes().size() + " instruments, " + designation.text() + " and on";
        long alike = entry.alike(known.get());
        return alike == 0 ? what : what + "; " + alike + " alike in the library already";
    }
}
