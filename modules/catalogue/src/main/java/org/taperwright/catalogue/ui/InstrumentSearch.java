package org.taperwright.catalogue.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.function.Consumer;
import java.util.prefs.Preferences;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import org.taperwright.library.store.InstrumentFilter;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.ShrinkingRow;
import org.taperwright.workbench.ui.Spacing;

/** What narrows the table: words, further conditions on demand, filters saved by name. */
final class InstrumentSearch extends JPanel {
    private static final String OPEN = "filters.open";

    private final SearchField words = new SearchField(
            "instruments.filter", "Filter by name, size, taper, section, alloy, motion, supplier, lot…");
    private final FilterBar conditions = new FilterBar();
    private final JToggleButton more = new JToggleButton("Filters");
    private final JPanel buttons = new JPanel(new ShrinkingRow(Spacing.NEAR));
    private transient Runnable changed = () -> {};

    InstrumentSearch(Desk desk, Preferences settings, JLabel count) {
        super(new BorderLayout(Spacing.NEAR, Spacing.NEAR));
        setOpaque(false);
        more.setName("filter.more");
        more.setToolTipText("Size range, taper, length, section, alloy, motion, stock, motor");
        more.setSelected(settings.getBoolean(OPEN, false));
        more.addActionListener(event -> {
            settings.putBoolean(OPEN, more.isSelected());
            conditions.setVisible(more.isSelected());
            revalidate();
        });
        conditions.setVisible(more.isSelected());
        words.onChange(this::changed);
        conditions.onChange(this::changed);
        buttons.setOpaque(false);
        buttons.add(count);
        buttons.add(more);
        buttons.add(new SavedFilterButton(desk, this::filter, kept -> {
            show(kept);
            changed();
        }));
        add(words, BorderLayout.CENTER);
        add(buttons, BorderLayout.LINE_END);
        add(conditions, BorderLayout.SOUTH);
    }

    /** Puts a further button beside. */
    void button(String label, String explanation, Consumer<Component> action) {
        JButton button = new JButton(label);
        button.setName("instruments." + label.replace("…", "").toLowerCase(java.util.Locale.ROOT));
        button.setToolTipText(explanation);
        button.addActionListener(event -> action.accept(button));
        buttons.add(button);
    }

    /** Calls back at every change of words or conditions. */
    void onChange(Runnable listener) {
        changed = listener;
    }

    /** Calls back at the down arrow. */
    void onDown(Runnable down) {
        words.onDown(down);
    }

    private void changed() {
        int count = RowMatch.conditions(filter());
        more.setText(count == 0 ? "Filters" : "Filters (" + count + ")");
        changed.run();
    }

    /** The filter as it stands. */
    InstrumentFilter filter() {
        return conditions.filter(words.getText());
    }

    /** Shows a filter. */
    void show(InstrumentFilter filter) {
        conditions.show(filter);
        words.setText(filter.words());
        changed();
        if (RowMatch.conditions(filter) > 0 && !more.isSelected()) {
            more.doClick();
        }
    }

    /** Offers what occurs in the library. */
    void offer(InstrumentChoices choices) {
        conditions.offer(choices);
    }
}
