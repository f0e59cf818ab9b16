package org.taperwright.workbench.ui;

import java.awt.Component;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.DefaultComboBoxModel;
import javax.swing.DefaultListCellRenderer;
import javax.swing.Icon;
import javax.swing.JComboBox;
import javax.swing.JList;

/** A field for one of several things, shown by their words. */
public final class ChoiceField<T> extends JComboBox<T> {
    private transient Consumer<T> commit = value -> {};
    private transient Function<T, Optional<Icon>> icons = value -> Optional.empty();
    private boolean quiet;

    /**
     * @param name what tests and other code find it by
     * @param what the choice in people's words
     * @param words how each thing is shown
     */
    public ChoiceField(String name, String what, List<T> choices, Function<T, String> words) {
        setName(name);
        getAccessibleContext().setAccessibleName(what);
        setRenderer(new DefaultListCellRenderer() {
            @Override
            @SuppressWarnings("unchecked")
            public Component getListCellRendererComponent(
                    JList<?> list, Object value, int index, boolean selected, boolean focused) {
                String word = value == null ? "" : words.apply((T) value);
                super.getListCellRendererComponent(list, word, index, selected, focused);
                setIcon(value == null ? null : icons.apply((T) value).orElse(null));
                setIconTextGap(Spacing.TIGHT);
                return this;
            }
        });
        setChoices(choices);
        addActionListener(event -> {
            int index = getSelectedIndex();
            if (!quiet && index >= 0) {
                commit.accept(getItemAt(index));
            }
        });
    }

    /** Receives what a person chooses. */
    public ChoiceField<T> onCommit(Consumer<T> listener) {
        commit = listener;
        return this;
    }

    /** Puts a small picture before each word. */
    public ChoiceField<T> withIcons(Function<T, Optional<Icon>> pictures) {
        icons = pictures;
        return this;
    }

    /** Offers other things, keeping the selection where it still is offered. */
    public void setChoices(List<T> choices) {
        Object selected = getSelectedItem();
        quiet = true;
        DefaultComboBoxModel<T> model = new DefaultComboBoxModel<>();
        model.addAll(choices);
        setModel(model);
        if (selected != null && choices.contains(selected)) {
            setSelectedItem(selected);
        }
        quiet = false;
    }

    /** Shows a value from elsewhere without telling anyone. */
    public void setValue(T value) {
        quiet = true;
        setSelectedItem(value);
        quiet = false;
    }
}
