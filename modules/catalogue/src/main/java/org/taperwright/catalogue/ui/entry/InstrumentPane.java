package org.taperwright.catalogue.ui.entry;

import java.awt.CardLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.Spacing;

/** Beside the table: every field of the instrument selected, or what many selected are to have in common. */
public final class InstrumentPane extends JPanel {
    private static final String NONE = "none";
    private static final String ONE = "one";
    private static final String MANY = "many";

    private final transient Desk desk;
    private final CardLayout cards = new CardLayout();
    private final InstrumentForm one;
    private final ManyForm many;

    /** Makes the pane on a desk. */
    public InstrumentPane(Desk desk) {
        this.desk = desk;
        setLayout(cards);
        setName("instrument.pane");
        one = new InstrumentForm(desk);
        many = new ManyForm(desk);
        FormPane nothing = new FormPane("instrument.none");
        nothing.setBorder(Spacing.around(Spacing.NEAR));
        nothing.heading("No instrument selected")
                .wide(new Prose(
                        "Select one to see and change every field of it, or several to change them together.",
                        Ink::quiet,
                        false));
        add(nothing, NONE);
        add(one, ONE);
        add(many, MANY);
    }

    /** Shows what is selected in the table. */
    public void show(List<ThingId> ids) {
        if (ids.size() > 1) {
            many.show(ids);
            cards.show(this, MANY);
            return;
        }
        Optional<Instrument> found =
                ids.stream().findFirst().flatMap(id -> desk.snapshot().thing(id, Instrument.class));
        found.ifPresent(instrument -> one.show(ids.get(0), instrument));
        cards.show(this, found.isPresent() ? ONE : NONE);
    }
}
