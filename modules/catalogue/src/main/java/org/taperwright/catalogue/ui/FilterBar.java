package org.taperwright.catalogue.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.InstrumentFilter;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.section.SectionFamily;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.shaping.instrument.Window;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.RowLabel;
import org.taperwright.workbench.ui.ShrinkingRow;
import org.taperwright.workbench.ui.Spacing;

/** The conditions of a filter besides its words: sizes, taper, length, section, alloy, motion, stock, motor. */
final class FilterBar extends JPanel {
    private final JTextField sizes = new JTextField(6);
    private final ChoiceField<Optional<Double>> taper = choice("taper", "Taper", "any taper", Shown::taper);
    private final ChoiceField<Optional<Double>> length = choice("length", "Length", "any length", Shown::mm);
    private final ChoiceField<Optional<String>> section =
            choice("section", "Section", "any section", FilterBar::section);
    private final ChoiceField<Optional<String>> alloy = choice("alloy", "Alloy", "any alloy", FilterBar::alloy);
    private final ChoiceField<Optional<Motion>> motion = choice("motion", "Motion", "any motion", Motion::word);
    private final JCheckBox stock = new JCheckBox("In stock");
    private final ChoiceField<Optional<Entry>> motor = choice("motor", "Motor", "any motor", Entry::name);
    private final JButton clear = new JButton("Clear");
    private transient Runnable changed = () -> {};
    private transient Optional<ThingId> wantedMotor = Optional.empty();
    private boolean quiet;

    FilterBar() {
        super(new BorderLayout(0, Spacing.TIGHT));
        setName("instruments.filters");
        setOpaque(false);
        sizes.setName("filter.sizes");
        sizes.getAccessibleContext().setAccessibleName("Sizes");
        sizes.putClientProperty("JTextField.placeholderText", "15–40");
        sizes.setToolTipText("A size such as 25, or a range such as 15–40");
        sizes.getDocument().addDocumentListener(new Typing());
        motor.setToolTipText("Only instruments whose stated speed, torque, motion and angles this motor can be set to");
        motion.setChoices(optional(List.of(Motion.values())));
        stock.setName("filter.stock");
        stock.setOpaque(false);
        stock.setToolTipText(
                "Only instruments of which some lie in the drawer; the word low finds those below their level");
        clear.setName("filter.clear");
        clear.setToolTipText("Lets everything through again");
        clear.addActionListener(event -> {
            show(InstrumentFilter.ALL);
            changed.run();
        });
        listen(taper);
        listen(length);
        listen(section);
        listen(alloy);
        listen(motion);
        stock.addActionListener(event -> changed());
        motor.onCommit(chosen -> {
            wantedMotor = chosen.map(Entry::id);
            changed();
        });
        add(row(new RowLabel("Sizes", sizes), sizes, taper, length, motion, stock), BorderLayout.NORTH);
        add(row(section, alloy, new RowLabel("driven by", motor), motor, clear), BorderLayout.SOUTH);
    }

    private static JPanel row(Component... parts) {
        JPanel row = new JPanel(new ShrinkingRow(Spacing.NEAR));
        row.setOpaque(false);
        for (Component part : parts) {
            row.add(part);
        }
        return row;
    }

    private static <T> ChoiceField<Optional<T>> choice(
            String name, String what, String any, Function<T, String> words) {
        return new ChoiceField<>(
                "filter." + name,
                what,
                List.of(Optional.empty()),
                value -> value.map(words).orElse(any));
    }

    private <T> void listen(ChoiceField<Optional<T>> field) {
        field.setValue(Optional.empty());
        field.onCommit(any -> changed());
    }

    private void changed() {
        if (!quiet) {
            changed.run();
        }
    }

    /** Calls back at every change. */
    void onChange(Runnable listener) {
        changed = listener;
    }

    /** Offers what occurs in the library. */
    void offer(InstrumentChoices choices) {
        quiet = true;
        offer(taper, choices.tapers());
        offer(length, choices.lengthsMm());
        offer(section, choices.families());
        offer(alloy, choices.alloys());
        List<Optional<Entry>> motors = optional(choices.motors());
        motor.setChoices(motors);
        motor.setValue(motors.stream()
                .filter(each -> each.map(Entry::id).equals(wantedMotor))
                .findFirst()
                .orElse(Optional.empty()));
        quiet = false;
    }

    /** What is chosen stays offered, even when nothing in the library has it any more. */
    private static <T> void offer(ChoiceField<Optional<T>> field, List<T> values) {
        Optional<T> chosen = chosen(field);
        List<Optional<T>> offered = new ArrayList<>(optional(values));
        if (!offered.contains(chosen)) {
            offered.add(chosen);
        }
        field.setChoices(offered);
        field.setValue(chosen);
    }

    private static <T> List<Optional<T>> optional(List<T> values) {
        List<Optional<T>> all = new ArrayList<>(List.of(Optional.empty()));
        values.forEach(value -> all.add(Optional.of(value)));
        return all;
    }

    private static <T> Optional<T> chosen(ChoiceField<Optional<T>> field) {
        int index = field.getSelectedIndex();
        return index < 0 ? Optional.empty() : field.getItemAt(index);
    }

    private static String section(String family) {
        return Sections.family(family).map(SectionFamily::label).orElse(family);
    }

    private static String alloy(String id) {
        return Alloys.find(id).map(Alloy::label).orElse(id);
    }

    /** The filter chosen, with these words. */
    InstrumentFilter filter(String words) {
        List<Integer> ends = SizesEntry.range(sizes.getText()).sizes();
        return new InstrumentFilter(
                words,
                ends.isEmpty() ? Optional.empty() : Optional.of(new Window(ends.get(0), ends.get(1))),
                chosen(taper).map(value -> new Window(value, value)),
                chosen(length).map(value -> new Window(value, value)),
                chosen(section).stream().toList(),
                chosen(alloy).stream().toList(),
                chosen(motion).stream().toList(),
                stock.isSelected(),
                wantedMotor);
    }

    /** Shows a filter without telling anyone; of several choices in one field, the first. */
    void show(InstrumentFilter filter) {
        quiet = true;
        sizes.setText(filter.size().map(FilterBar::text).orElse(""));
        show(taper, filter.taper().map(Window::least));
        show(length, filter.lengthMm().map(Window::least));
        show(section, filter.families().stream().findFirst());
        show(alloy, filter.alloys().stream().findFirst());
        show(motion, filter.motions().stream().findFirst());
        stock.setSelected(filter.inStock());
        wantedMotor = filter.motor();
        for (int i = 0; i < motor.getItemCount(); i++) {
            if (motor.getItemAt(i).map(Entry::id).equals(wantedMotor)) {
                motor.setValue(motor.getItemAt(i));
            }
        }
        quiet = false;
    }

    private static <T> void show(ChoiceField<Optional<T>> field, Optional<T> value) {
        List<Optional<T>> offered = new ArrayList<>();
        for (int i = 0; i < field.getItemCount(); i++) {
            offered.add(field.getItemAt(i));
        }
        if (!offered.contains(value)) {
            offered.add(value);
            field.setChoices(offered);
        }
        field.setValue(value);
    }

    private static String text(Window range) {
        String least = Shown.number(range.least(), 0, 0);
        String most = Shown.number(range.most(), 0, 0);
        return least.equals(most) ? least : least + "–" + most;
    }

    /** Tells of every change of the sizes. */
    private final class Typing implements DocumentListener {
        @Override
        public void insertUpdate(DocumentEvent event) {
            typed();
        }

        @Override
        public void removeUpdate(DocumentEvent event) {
            typed();
        }

        @Override
        public void changedUpdate(DocumentEvent event) {
            typed();
        }

        private void typed() {
            String fault = SizesEntry.range(sizes.getText()).fault();
            sizes.putClientProperty("JComponent.outline", fault.isEmpty() ? null : "error");
            sizes.setToolTipText(fault.isEmpty() ? "A size such as 25, or a range such as 15–40" : fault);
            changed();
        }
    }
}
