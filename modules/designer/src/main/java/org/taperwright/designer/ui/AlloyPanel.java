package org.taperwright.designer.ui;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import org.taperwright.library.history.Change;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.measured.OwnAlloy;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.api.Subscription;
import org.taperwright.workbench.ui.CautionLine;
import org.taperwright.workbench.ui.EmptyState;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.NameField;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.Spacing;

/**
 * One alloy of the library's own: its constants with their bands, how they were found, where they hold, and which designs are made
 * of it. Name and note can be changed; its numbers cannot, for another fit is another alloy.
 */
public final class AlloyPanel extends JPanel {
    private static final String SHOWN = "shown";
    private static final String EMPTY = "empty";

    private final transient Desk desk;
    private final CardLayout cards = new CardLayout();
    private final NameField name = new NameField("alloy.name", "Name of the alloy");
    private final NameField.Lines note = new NameField.Lines("alloy.note", "Note", 2);
    private final Prose constants = prose("alloy.constants");
    private final Prose fit = prose("alloy.fit");
    private final Prose source = prose("alloy.source");
    private final Prose use = prose("alloy.use");
    private final transient List<Subscription> subscriptions = new ArrayList<>();
    private Optional<ThingId> shown = Optional.empty();

    /** Makes the panel on a desk. */
    public AlloyPanel(Desk desk) {
        this.desk = desk;
        setName("alloyPanel");
        setLayout(cards);
        JScrollPane lines = new JScrollPane(note);
        lines.setName("alloy.note.scroll");
        FormPane form = new FormPane("alloy.form");
        form.setBorder(Spacing.around(Spacing.NEAR, Spacing.APART));
        form.row("Name", name, "What people call this alloy")
                .row("Note", lines, "Free text; keep patient data out of it")
                .heading("Constants, with their 5 to 95 % bands")
                .wide(constants)
                .heading("How they were found")
                .wide(fit)
                .heading("Source and where they hold")
                .wide(source)
                .heading("Designs made of it")
                .wide(use);
        JScrollPane scroll = new JScrollPane(form);
        scroll.setName("alloy.scroll");
        scroll.setBorder(BorderFactory.createEmptyBorder());
        CautionLine caution = new CautionLine();
        caution.setBorder(Spacing.around(Spacing.TIGHT, Spacing.APART));
        JPanel content = new JPanel(new BorderLayout());
        content.add(scroll, BorderLayout.CENTER);
        content.add(caution, BorderLayout.SOUTH);
        add(content, SHOWN);
        add(
                new EmptyState(
                        "alloy.empty",
                        "The library has no alloy of its own",
                        "Lay measurements over the curves of a comparison, fit an alloy to them and keep it.",
                        List.of()),
                EMPTY);
        name.onCommit(words -> {
            if (words.isBlank()) {
                refresh();
            } else {
                edit("Rename alloy to " + words.strip(), alloy -> alloy.named(words.strip()));
            }
        });
        note.onCommit(words -> edit("Note of an alloy", alloy -> alloy.noting(words)));
        refresh();
    }

    private static Prose prose(String name) {
        Prose prose = new Prose("", Ink::text, false);
        prose.setName(name);
        return prose;
    }

    @Override
    public void addNotify() {
        super.addNotify();
        subscriptions.add(desk.onChange(snapshot -> refresh()));
        subscriptions.add(desk.onSelect(id -> refresh()));
        refresh();
    }

    @Override
    public void removeNotify() {
        subscriptions.forEach(Subscription::close);
        subscriptions.clear();
        super.removeNotify();
    }

    private void edit(String what, UnaryOperator<OwnAlloy> change) {
        shown.flatMap(id -> desk.snapshot().thing(id, OwnAlloy.class)).ifPresent(alloy -> {
            OwnAlloy after = change.apply(alloy);
            if (!after.equals(alloy)) {
                desk.tryEdit(what, List.of(new Change.Put(shown.orElseThrow(), after)));
                refresh();
            }
        });
    }

    private void refresh() {
        shown = desk.selected(ThingKind.ALLOY)
                .or(() -> shown.filter(id -> desk.snapshot().entry(id).isPresent()))
                .or(() -> desk.snapshot().ofKind(ThingKind.ALLOY).stream()
                        .findFirst()
                        .map(Entry::id));
        Optional<OwnAlloy> alloy = shown.flatMap(id -> desk.snapshot().thing(id, OwnAlloy.class));
        cards.show(this, alloy.isPresent() ? SHOWN : EMPTY);
        alloy.ifPresent(known -> {
            // taken back first, so that what was typed and refused does not stay
            name.setValue("");
            name.setValue(known.name());
            note.setValue(known.note());
            constants.setText(AlloyWords.constants(known));
            fit.setText(AlloyWords.fit(known));
            source.setText(known.source() + "\n\n" + known.validity());
            use.setText(AlloyWords.use(shown.orElseThrow(), desk.snapshot()));
            revalidate();
        });
    }
}
