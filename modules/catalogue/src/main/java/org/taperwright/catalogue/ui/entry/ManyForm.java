package org.taperwright.catalogue.ui.entry;

import java.awt.BorderLayout;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.quantity.Entry;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.quantity.Unit;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.FieldChange;
import org.taperwright.shaping.instrument.ManyEdit;
import org.taperwright.shaping.instrument.Supply;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.Heading;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.TextChanges;
import org.taperwright.workbench.ui.Written;

/** The same fields of many instruments set at once: one edit, with what became of each row that could not be changed. */
final class ManyForm extends JPanel {
    private static final int MOST_TOLD = 5;
    private static final int MOST_USES = 1000;
    private static final Written<Double> LENGTH = new Written<>(
            text -> Entry.read(text, Unit.MILLIMETRE, "") instanceof Entry.Given given && given.value() > 0
                    ? Optional.of(given.value())
                    : Optional.empty(),
            Shown::mm,
            "a length in mm such as 25");

    private final transient Desk desk;
    private final Heading title = new Heading(" ");
    private final JButton change = new JButton("Change");
    private final Prose outcome = new Prose("", Ink::text, false);
    private final transient List<ManyField> fields = fields();
    private transient List<ThingId> selected = List.of();

    ManyForm(Desk desk) {
        super(new BorderLayout());
        this.desk = desk;
        setName("many.form");
        title.setName("many.title");
        change.setName("many.change");
        change.addActionListener(event -> change());
        outcome.setName("many.outcome");
        FormPane form = new FormPane("many.fields");
        form.setBorder(Spacing.around(Spacing.NEAR));
        form.wide(title)
                .wide(new Prose(
                        "Fill in what is to be the same in all of them; what is left empty stays as it is. “none” clears "
                                + "a field.",
                        Ink::quiet,
                        true));
        for (ManyField each : fields) {
            form.row(each.label(), each.field(), "Expected: " + each.expected());
            TextChanges.each(each.field(), this::typed);
        }
        JPanel button = new JPanel(new BorderLayout());
        button.setOpaque(false);
        button.add(change, BorderLayout.LINE_START);
        form.wide(button).wide(outcome);
        JScrollPane scroll = new JScrollPane(form);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        add(scroll);
    }

    private static List<ManyField> fields() {
        return List.of(
                ManyField.written("Stock", Written.count(Supply.MOST), FieldChange.Stock::new),
                ManyField.written("Reorder level", Written.count(Supply.MOST), FieldChange.ReorderLevel::new),
                ManyField.words("Supplier", FieldChange.Supplier::new),
                ManyField.words("Lot", FieldChange.Lot::new),
                ManyField.written("Expiry", Written.day(), FieldChange.Expiry::new),
                ManyField.written("Price", Prices.written(), FieldChange.Cost::new),
                ManyField.words("Maker", FieldChange.Maker::new),
                ManyField.words("Line", FieldChange.Line::new),
                ManyField.words("Type", FieldChange.Type::new),
                ManyField.written("Length", LENGTH, FieldChange.Length::new),
                ManyField.word("Drive", Drive.values(), Drive::word, FieldChange.HeldBy::new),
                ManyField.word("Motion", Motion.values(), Motion::word, FieldChange.MovedBy::new),
                ManyField.word(
                        "Design",
                        new Boolean[] {false, true},
                        assumed -> assumed ? "assumed" : "known",
                        FieldChange.Assumed::new),
                ManyField.written("Speed", Written.window(Unit.RPM, Unit.RPM), FieldChange.Speed::new),
                ManyField.written(
                        "Torque",
                        Written.window(Unit.NEWTON_CENTIMETRE, Unit.NEWTON_MILLIMETRE),
                        FieldChange.Torque::new),
                ManyField.written("Uses allowed", Written.count(MOST_USES), FieldChange.UsesAllowed::new),
                ManyField.words("Note", FieldChange.Note::new));
    }

    /** Shows how many are selected; what was typed stays. */
    void show(List<ThingId> ids) {
        if (!ids.equals(selected)) {
            outcome.setText("");
        }
        selected = List.copyOf(ids);
        title.setText(String.format(Locale.UK, "%,d instruments selected", ids.size()));
        change.setText(String.format(Locale.UK, "Change %,d instruments", ids.size()));
        typed();
    }

    private void typed() {
        change.setEnabled(fields.stream().anyMatch(ManyField::used));
    }

    private void change() {
        List<FieldChange> changes = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        for (ManyField field : fields) {
            if (field.used()) {
                field.change().ifPresentOrElse(changes::add, () -> faults.add(field.fault()));
            }
        }
        if (!faults.isEmpty()) {
            outcome.setText(String.join("\n", faults));
            return;
        }
        ManyChange work = new ManyChange(new ManyEdit(changes), selected, LocalDate.now());
        say("Changing…");
        desk.editMany(this, "Changing many instruments", work, done -> tell(work, done));
    }

    private void tell(ManyChange work, Outcome<List<Fault>> done) {
        if (done instanceof Outcome.Current<List<Fault>> current) {
            if (current.value().isEmpty() && work.changed() > 0) {
                fields.forEach(field -> field.field().setText(""));
            }
            say(current.value().isEmpty() ? work.words() : "Nothing was changed: " + sentences(current.value()));
        } else if (done instanceof Outcome.Failed<List<Fault>> failed) {
            say("Nothing was changed: " + failed.reason());
        } else {
            say("Stopped; nothing was changed.");
        }
    }

    private static String sentences(List<Fault> faults) {
        return faults.stream().map(Fault::sentence).distinct().limit(MOST_TOLD).collect(Collectors.joining("; "));
    }

    private void say(String words) {
        outcome.setText(words);
        outcome.scrollRectToVisible(new java.awt.Rectangle(outcome.getSize()));
    }
}
