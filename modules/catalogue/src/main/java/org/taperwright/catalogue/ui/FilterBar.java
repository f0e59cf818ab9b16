package org.taperwright.catalogue.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JTextField;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.InstrumentFilter;
import org.taperwright.mechanics.alloy.KnownAlloys;
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
import org.taperwright.workbench.ui.TextChanges;

/**
 * The conditions of a filter besides its words: sizes, taper, length, section, alloy, motion, stock, motor. A filter shown stays
 * whole: a range or several choices, which a saved filter may hold, stand among the choices in words of their own.
 */
final class FilterBar extends JPanel {
    private static final String SIZES = "A size such as 25, or a range such as 15–40";

    private final JTextField sizes = new JTextField(6);
    private final ChoiceField<Optional<Window>> taper = choice("taper", "Taper", Optional.empty(), FilterBar::taper);
    private final ChoiceField<Optional<Window>> length =
            choice("length", "Length", Optional.empty(), FilterBar::length);
    private final ChoiceField<List<String>> section =
            choice("section", "Section", List.of(), some -> words(some, "any section", FilterBar::section));
    private final ChoiceField<List<String>> alloy =
            choice("alloy", "Alloy", List.of(), some -> words(some, "any alloy", this::alloy));
    private final ChoiceField<List<Motion>> motion =
            choice("motion", "Motion", List.of(), some -> words(some, "any motion", Motion::word));
    private final JCheckBox stock = new JCheckBox("In stock");
    private final ChoiceField<Optional<ThingId>> motor = choice("motor", "Motor", Optional.empty(), this::motor);
    private final JButton clear = new JButton("Clear");
    private transient Runnable changed = () -> {};
    private transient List<Entry> motors = List.of();
    private transient Map<String, String> alloys = Map.of();
    /** The sizes shown, with the text they are shown by: typed ones are whole numbers, kept ones need not be. */
    private transient Optional<Window> size = Optional.empty();

    private boolean quiet;

    FilterBar() {
        super(new BorderLayout(0, Spacing.TIGHT));
        setName("instruments.filters");
        setOpaque(false);
        sizes.setName("filter.sizes");
        sizes.getAccessibleContext().setAccessibleName("Sizes");
        sizes.putClientProperty("JTextField.placeholderText", "15–40");
        sizes.setToolTipText(SIZES);
        TextChanges.each(sizes, this::typed);
        motor.setToolTipText("Only instruments whose stated speed, torque, motion and angles this motor can be set to");
        offer(motion, Arrays.stream(Motion.values()).map(List::of).toList());
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
        List.of(taper, length, section, alloy, motion, motor).forEach(field -> field.onCommit(any -> changed()));
        stock.addActionListener(event -> changed());
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

    private static <T> ChoiceField<T> choice(String name, String what, T any, Function<T, String> words) {
        ChoiceField<T> field = new ChoiceField<>("filter." + name, what, List.of(any), words);
        field.setValue(any);
        return field;
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
        motors = choices.motors();
        alloys = choices.alloys();
        offer(taper, single(choices.tapers()));
        offer(length, single(choices.lengthsMm()));
        offer(section, choices.families().stream().map(List::of).toList());
        offer(alloy, choices.alloys().keySet().stream().map(List::of).toList());
        offer(motor, motors.stream().map(Entry::id).map(Optional::of).toList());
    }

    private static List<Optional<Window>> single(List<Double> values) {
        return values.stream()
                .map(value -> Optional.of(new Window(value, value)))
                .toList();
    }

    /** Offers choices after the one for any; what is chosen stays offered, even when nothing in the library has it any more. */
    private static <T> void offer(ChoiceField<T> field, List<T> values) {
        List<T> offered = new ArrayList<>(List.of(field.getItemAt(0)));
        offered.addAll(values);
        T chosen = chosen(field);
        if (!offered.contains(chosen)) {
            offered.add(chosen);
        }
        field.setChoices(offered);
        field.setValue(chosen);
    }

    private static <T> T chosen(ChoiceField<T> field) {
        return field.getItemAt(Math.max(0, field.getSelectedIndex()));
    }

    private static <T> void show(ChoiceField<T> field, T value) {
        List<T> offered = new ArrayList<>();
        for (int i = 0; i < field.getItemCount(); i++) {
            offered.add(field.getItemAt(i));
        }
        if (!offered.contains(value)) {
            offered.add(value);
            field.setChoices(offered);
        }
        field.setValue(value);
    }

    private static String taper(Optional<Window> range) {
        return range.map(each -> ends(each, Shown.taper(each.least()), Shown.taper(each.most())))
                .orElse("any taper");
    }

    private static String length(Optional<Window> range) {
        return range.map(each -> ends(each, Shown.number(each.least(), 0, 2), Shown.number(each.most(), 0, 2)) + " mm")
                .orElse("any length");
    }

    private static String ends(Window range, String least, String most) {
        return range.least() == range.most() ? least : least + "–" + most;
    }

    private static <T> String words(List<T> some, String any, Function<T, String> word) {
        return some.isEmpty() ? any : some.stream().map(word).collect(Collectors.joining(" or "));
    }

    private static String section(String family) {
        return Sections.family(family).map(SectionFamily::label).orElse(family);
    }

    private String alloy(String id) {
        return alloys.getOrDefault(id, KnownAlloys.SHIPPED.label(id));
    }

    private String motor(Optional<ThingId> id) {
        return id.map(wanted -> motors.stream()
                        .filter(each -> each.id().equals(wanted))
                        .map(Entry::name)
                        .findFirst()
                        .orElse("a motor no longer there"))
                .orElse("any motor");
    }

    /** The filter chosen, with these words. */
    InstrumentFilter filter(String words) {
        return new InstrumentFilter(
                words,
                size,
                chosen(taper),
                chosen(length),
                chosen(section),
                chosen(alloy),
                chosen(motion),
                stock.isSelected(),
                chosen(motor));
    }

    /** Shows a filter without telling anyone. */
    void show(InstrumentFilter filter) {
        quiet = true;
        sizes.setText(filter.size()
                .map(each -> ends(each, Shown.number(each.least(), 0, 2), Shown.number(each.most(), 0, 2)))
                .orElse(""));
        quiet = false;
        mark("");
        size = filter.size();
        show(taper, filter.taper());
        show(length, filter.lengthMm());
        show(section, filter.families());
        show(alloy, filter.alloys());
        show(motion, filter.motions());
        stock.setSelected(filter.inStock());
        show(motor, filter.motor());
    }

    private void typed() {
        if (!quiet) {
            SizesEntry read = SizesEntry.range(sizes.getText());
            List<Integer> ends = read.sizes();
            size = ends.isEmpty() ? Optional.empty() : Optional.of(new Window(ends.get(0), ends.get(1)));
            mark(read.fault());
            changed.run();
        }
    }

    private void mark(String fault) {
        sizes.putClientProperty("JComponent.outline", fault.isEmpty() ? null : "error");
        sizes.setToolTipText(fault.isEmpty() ? SIZES : fault);
    }
}
