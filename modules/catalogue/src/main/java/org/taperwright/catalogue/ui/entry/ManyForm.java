package org.taperwright.catalogue.ui.entry;

import java.awt.BorderLayout;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import org.taperwright.library.history.Change;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.quantity.Entry;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.quantity.Unit;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.FieldChange;
import org.taperwright.shaping.instrument.Instrument;
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
    private static final int MOST_TOLD = 50;
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
        ManyEdit edit = new ManyEdit(changes);
        List<ThingId> ids = selected;
        Snapshot library = desk.snapshot();
        desk.compute(
                this, "Changing many instruments", progress -> edit.in(chosen(library, ids), LocalDate.now()), done -> {
                    if (done instanceof Outcome.Current<ManyEdit.Outcome> current) {
                        keep(edit, current.value(), library);
                    } else if (done instanceof Outcome.Failed<ManyEdit.Outcome> failed) {
                        outcome.setText(failed.reason());
                    }
                });
    }

    private static Map<ThingId, Instrument> chosen(Snapshot library, List<ThingId> ids) {
        Map<ThingId, Instrument> chosen = new LinkedHashMap<>();
        ids.forEach(id -> library.thing(id, Instrument.class).ifPresent(found -> chosen.put(id, found)));
        return chosen;
    }

    /** Keeps what could be changed, unless the library changed meanwhile, and says what could not. */
    private void keep(ManyEdit edit, ManyEdit.Outcome made, Snapshot library) {
        if (desk.snapshot() != library) {
            change();
            return;
        }
        if (!made.changed().isEmpty()) {
            List<Change> puts = new ArrayList<>();
            made.changed().forEach((id, after) -> puts.add(new Change.Put(id, after)));
            desk.edit(edit.name(made.changed().size()), puts);
            fields.forEach(field -> field.field().setText(""));
        }
        outcome.setText(words(made, library));
        outcome.scrollRectToVisible(new java.awt.Rectangle(outcome.getSize()));
    }

    private static String words(ManyEdit.Outcome made, Snapshot library) {
        List<ThingId> left = made.faults().entrySet().stream()
                .filter(each -> each.getValue().stream().anyMatch(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE))
                .map(Map.Entry::getKey)
                .toList();
        String head = made.changed().size() + " changed"
                + (left.isEmpty() ? "." : ", " + left.size() + " left as they were:");
        String rows = made.faults().entrySet().stream()
                .limit(MOST_TOLD)
                .map(each -> row(each.getKey(), each.getValue(), library))
                .collect(Collectors.joining("\n"));
        String more =
                made.faults().size() > MOST_TOLD ? "\n… and " + (made.faults().size() - MOST_TOLD) + " more" : "";
        return rows.isEmpty() ? head : head + "\n" + rows + more;
    }

    private static String row(ThingId id, List<Fault> faults, Snapshot library) {
        String name = library.entry(id).map(entry -> entry.name()).orElse(id.value());
        return name + ": "
                + faults.stream()
                        .map(fault -> fault.what() + "; " + fault.expected())
                        .collect(Collectors.joining(", "));
    }
}
