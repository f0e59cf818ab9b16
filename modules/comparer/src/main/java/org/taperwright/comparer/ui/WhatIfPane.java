package org.taperwright.comparer.ui;

import java.awt.Dimension;
import java.awt.FlowLayout;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import org.taperwright.mechanics.comparison.sweep.Amount;
import org.taperwright.mechanics.comparison.sweep.Choice;
import org.taperwright.mechanics.comparison.sweep.DesignParameter;
import org.taperwright.mechanics.comparison.sweep.DesignParameters;
import org.taperwright.mechanics.comparison.sweep.Setting;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.QuantityField;
import org.taperwright.workbench.ui.QuantityKind;
import org.taperwright.workbench.ui.Spacing;

/**
 * What if: one parameter of one design, moved by slider, number or choice. Everything else shows what comes of it; the library
 * is not touched until it is kept as a new design.
 */
final class WhatIfPane extends JPanel {
    private static final int SLIDER = 120;
    private static final int FIELD = 165;

    private final transient Consumer<Optional<Trial>> tried;
    private final ChoiceField<Member> design =
            new ChoiceField<>("comparison.whatif.design", "Design to try a change on", List.of(), Member::name);
    private final ChoiceField<DesignParameter> parameter =
            new ChoiceField<>("comparison.whatif.parameter", "Parameter to move", List.of(), DesignParameter::label);
    private final JPanel value = new JPanel(new FlowLayout(FlowLayout.LEADING, Spacing.TIGHT, 0));
    private final JLabel now = new JLabel(" ");
    private final JButton keep = new JButton("Keep as new design");
    private final JButton drop = new JButton("Drop");
    private Optional<Trial> trial = Optional.empty();
    private List<DesignParameter> parameters = List.of();

    /**
     * @param tried receives every setting tried; nothing when it is dropped
     * @param kept receives a trial to keep
     */
    WhatIfPane(Consumer<Optional<Trial>> tried, Consumer<Trial> kept) {
        super(new WrappingRow(Spacing.NEAR));
        this.tried = tried;
        setName("comparison.whatif");
        setOpaque(false);
        value.setOpaque(false);
        value.setName("comparison.whatif.value");
        design.setPreferredSize(new Dimension(FIELD, design.getPreferredSize().height));
        parameter.setPreferredSize(new Dimension(FIELD, parameter.getPreferredSize().height));
        design.onCommit(member -> chooseDesign());
        parameter.onCommit(chosen -> chooseParameter());
        keep.setName("comparison.whatif.keep");
        keep.setToolTipText("Puts the design as tried into the library and compares it too; undo takes it back");
        keep.addActionListener(event -> trial.ifPresent(kept));
        drop.setName("comparison.whatif.drop");
        drop.setToolTipText("Goes back to the design as it is");
        drop.addActionListener(event -> drop());
        now.setForeground(Ink.quiet());
        JLabel title = new JLabel("What if");
        title.setFont(Ink.headingFont());
        title.setLabelFor(design);
        add(title);
        add(design);
        add(parameter);
        add(value);
        add(now);
        add(keep);
        add(drop);
        enableButtons();
    }

    /** Shows the members as the library has them, at first one that is not the datum: that moves on the map. */
    void show(List<Member> members, ThingId datum) {
        List<Member> present =
                members.stream().filter(member -> member.design().isPresent()).toList();
        Optional<Member> before = Optional.ofNullable((Member) design.getSelectedItem());
        design.setChoices(present);
        Optional<Member> after = before.flatMap(old -> present.stream()
                        .filter(each -> each.id().equals(old.id()))
                        .findFirst())
                .or(() -> present.stream()
                        .filter(each -> !each.id().equals(datum))
                        .findFirst())
                .or(() -> present.stream().findFirst());
        after.ifPresent(design::setValue);
        if (!after.equals(before) || trial.isPresent()) {
            forget();
        }
    }

    /** Ends a trial without telling anyone, and begins anew with the design as it is. */
    void forget() {
        trial = Optional.empty();
        chosen().ifPresent(member -> {
            Optional<String> before = Optional.ofNullable((DesignParameter) parameter.getSelectedItem())
                    .map(DesignParameter::id);
            parameters = DesignParameters.of(member.design().orElseThrow(), member.alloys());
            parameter.setChoices(parameters);
            parameters.stream()
                    .filter(each -> before.isEmpty() || before.get().equals(each.id()))
                    .findFirst()
                    .or(() -> parameters.stream().findFirst())
                    .ifPresent(parameter::setValue);
            showValue();
        });
        enableButtons();
    }

    private Optional<Member> chosen() {
        return Optional.ofNullable((Member) design.getSelectedItem())
                .filter(member -> member.design().isPresent());
    }

    private void chooseDesign() {
        boolean tryingBefore = trial.isPresent();
        forget();
        if (tryingBefore) {
            tried.accept(Optional.empty());
        }
    }

    private void chooseParameter() {
        boolean tryingBefore = trial.isPresent();
        trial = Optional.empty();
        showValue();
        enableButtons();
        if (tryingBefore) {
            tried.accept(Optional.empty());
        }
    }

    private void drop() {
        trial = Optional.empty();
        showValue();
        enableButtons();
        tried.accept(Optional.empty());
    }

    private void showValue() {
        value.removeAll();
        Design as = chosen().orElseThrow().design().orElseThrow();
        DesignParameter moved = (DesignParameter) parameter.getSelectedItem();
        if (moved instanceof Amount amount) {
            showAmount(as, amount);
        } else if (moved instanceof Choice choice) {
            List<Setting> settings = choice.settings(as, 0);
            ChoiceField<Setting> field =
                    new ChoiceField<>("comparison.whatif.choice", choice.label(), settings, Setting::words);
            settings.stream()
                    .filter(each -> each.words().equals(choice.words(as)))
                    .forEach(field::setValue);
            field.onCommit(setting -> settle(choice, setting));
            value.add(field);
        }
        String unit = moved.unit().isEmpty() ? "" : " " + moved.unit();
        now.setText("is " + moved.words(as) + unit);
        value.revalidate();
        revalidate();
        repaint();
    }

    private void showAmount(Design as, Amount amount) {
        double here = amount.value().applyAsDouble(as);
        int steps = (int) Math.max(1, Math.round((amount.most() - amount.least()) / amount.step()));
        JSlider slider = new JSlider(0, steps, step(amount, here, steps));
        slider.setName("comparison.whatif.slider");
        slider.getAccessibleContext().setAccessibleName(amount.label());
        slider.setOpaque(false);
        slider.setPreferredSize(new Dimension(SLIDER, slider.getPreferredSize().height));
        QuantityField number = new QuantityField(
                "comparison.whatif.number",
                amount.label(),
                new QuantityKind(
                        amount.unit(),
                        amount.least(),
                        amount.most(),
                        amount.step(),
                        0,
                        amount.whole() ? 0 : 4,
                        Map.of()));
        number.setValue(here);
        boolean[] echo = new boolean[1];
        slider.addChangeListener(event -> {
            if (!echo[0]) {
                double share = (double) slider.getValue() / steps;
                double moved = amount.least() * (1 - share) + amount.most() * share;
                double rounded = Math.rint(moved * 1e4) / 1e4;
                number.setValue(rounded);
                settle(amount, rounded);
            }
        });
        number.onCommit(typed -> {
            echo[0] = true;
            slider.setValue(step(amount, typed, steps));
            echo[0] = false;
            settle(amount, typed);
        });
        value.add(slider);
        value.add(number);
    }

    private static int step(Amount amount, double at, int steps) {
        double share = (at - amount.least()) / (amount.most() - amount.least());
        return (int) Math.round(Math.max(0, Math.min(1, share)) * steps);
    }

    private void settle(Amount amount, double wanted) {
        Design as = chosen().orElseThrow().design().orElseThrow();
        Design moved = amount.with(as, wanted);
        settle(amount, new Setting(amount.value().applyAsDouble(moved), amount.words(moved), moved));
    }

    private void settle(DesignParameter moved, Setting setting) {
        Member member = chosen().orElseThrow();
        trial = Optional.of(new Trial(member.id(), member.design().orElseThrow(), moved, setting));
        enableButtons();
        tried.accept(trial);
    }

    private void enableButtons() {
        keep.setEnabled(trial.isPresent());
        drop.setEnabled(trial.isPresent());
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (now != null) {
            now.setForeground(Ink.quiet());
        }
    }
}
