package org.taperwright.catalogue.ui.exchange;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextField;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.table.TableKind;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.RowLabel;
import org.taperwright.workbench.ui.ShrinkingRow;
import org.taperwright.workbench.ui.Spacing;

/** Which file is read and how: what its rows are, its encoding, delimiter and decimal sign. */
final class ReadingBar extends JPanel {
    private static final List<Charset> CHARSETS = List.of(
            StandardCharsets.UTF_8,
            Charset.forName("windows-1252"),
            StandardCharsets.ISO_8859_1,
            Charset.forName("ISO-8859-15"),
            StandardCharsets.UTF_16LE,
            StandardCharsets.UTF_16BE);

    private final JTextField file = new JTextField(22);
    private final ChoiceField<TableKind> kind = new ChoiceField<>(
            "import.kind",
            "Rows",
            List.of(TableKind.values()),
            each -> each.thing().heading());
    private final ChoiceField<Charset> charset =
            new ChoiceField<>("import.charset", "Encoding", CHARSETS, Charset::displayName);
    private final ChoiceField<Character> delimiter = new ChoiceField<>(
            "import.delimiter",
            "Delimiter",
            List.of(',', ';', '\t'),
            sign -> new CsvFormat(StandardCharsets.UTF_8, sign, '.').delimiterWord());
    private final ChoiceField<Character> decimal = new ChoiceField<>(
            "import.decimal", "Decimal sign", List.of('.', ','), sign -> sign == '.' ? "point" : "comma");
    private final transient Consumer<Incoming> look;
    private transient Optional<IncomingView> view = Optional.empty();

    ReadingBar(Runnable choose, Consumer<String> typed, Consumer<Incoming> look) {
        super(new ShrinkingRow(Spacing.NEAR));
        this.look = look;
        file.setName("import.file");
        file.getAccessibleContext().setAccessibleName("File");
        file.setToolTipText("A table (CSV) or bundle (JSON); Enter looks through it");
        file.addActionListener(event -> typed.accept(file.getText().strip()));
        JButton open = new JButton("File…");
        open.setName("import.open");
        open.addActionListener(event -> choose.run());
        kind.setValue(TableKind.INSTRUMENTS);
        kind.onCommit(chosen -> again(incoming -> incoming.of(chosen)));
        charset.setValue(StandardCharsets.UTF_8);
        charset.onCommit(chosen -> again(incoming -> incoming.in(chosen)));
        delimiter.onCommit(chosen -> written());
        decimal.onCommit(chosen -> written());
        add(open);
        add(file);
        labelled("rows are", kind);
        labelled("encoding", charset);
        labelled("delimiter", delimiter);
        labelled("decimal", decimal);
        wake(false);
    }

    private void labelled(String words, ChoiceField<?> field) {
        add(new RowLabel(words, field));
        add(field);
    }

    private void again(java.util.function.UnaryOperator<Incoming> change) {
        view.ifPresent(now -> look.accept(change.apply(now.incoming())));
    }

    private void written() {
        int sign = delimiter.getSelectedIndex();
        int point = decimal.getSelectedIndex();
        if (sign >= 0 && point >= 0) {
            Charset chosen = charset.getItemAt(Math.max(0, charset.getSelectedIndex()));
            CsvFormat format = new CsvFormat(chosen, delimiter.getItemAt(sign), decimal.getItemAt(point));
            again(incoming -> incoming.written(format));
        }
    }

    /** What the rows of a table are. */
    TableKind kind() {
        return kind.getItemAt(Math.max(0, kind.getSelectedIndex()));
    }

    /** Shows how a file was read. */
    void show(IncomingView now) {
        view = Optional.of(now);
        file.setText(now.incoming().file().toString());
        file.setToolTipText(file.getText());
        now.incoming().charset().ifPresent(charset::setValue);
        now.format().ifPresent(format -> {
            charset.setValue(format.charset());
            delimiter.setValue(format.delimiter());
            decimal.setValue(format.decimal());
        });
        wake(!now.incoming().forms());
    }

    private void wake(boolean table) {
        List.of(charset, delimiter, decimal).forEach(field -> field.setEnabled(table));
    }
}
