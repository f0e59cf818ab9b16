package org.taperwright.designer.ui;

import javax.swing.JScrollPane;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.NameField;

/** The design's name and note. */
final class IdentityPart {
    private static final int NOTE_LINES = 2;

    private final NameField name = new NameField("design.name", "Name");
    private final NameField.Lines note = new NameField.Lines("design.note", "Note", NOTE_LINES);

    IdentityPart(FormPane form, OpenDesign open) {
        name.onCommit(words -> enterName(open, words));
        note.onCommit(words ->
                open.edit("Note", design -> Designs.with(design).note(words).design()));
        JScrollPane noteScroll = new JScrollPane(note);
        noteScroll.setName("design.note.scroll");
        form.row("Name", name, "What people call this design")
                .row("Note", noteScroll, "Free text; keep patient data out of it");
        open.onShown(shown -> shown.shown().ifPresent(this::show));
    }

    private void enterName(OpenDesign open, String words) {
        if (words.isEmpty()) {
            open.shown().ifPresent(design -> {
                name.setText(design.name());
                name.setValue("");
                name.setValue(design.name());
            });
        } else {
            open.edit(
                    "Rename to \u201c" + words + "\u201d",
                    design -> Designs.with(design).name(words).design());
        }
    }

    private void show(Design design) {
        name.setValue(design.name());
        note.setValue(design.note());
    }
}
