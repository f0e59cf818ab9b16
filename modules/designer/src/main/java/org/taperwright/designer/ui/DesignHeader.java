package org.taperwright.designer.ui;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.taperwright.library.history.Change;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.IsoSize;
import org.taperwright.mechanics.design.IsoSizes;
import org.taperwright.mechanics.design.SizeColour;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.SizeChip;
import org.taperwright.workbench.ui.Spacing;

/** Which design is open, its size, and whether what is shown is up to date; new and duplicate designs. */
final class DesignHeader extends JPanel {
    private final Desk desk;
    private final ChoiceField<ThingId> choice;
    private final JLabel size = new JLabel();
    private final JLabel status = new JLabel();
    private long offered = -1;

    DesignHeader(Desk desk, OpenDesign open, Results results) {
        super(new BorderLayout(Spacing.NEAR, 0));
        this.desk = desk;
        setName("design.header");
        setOpaque(false);
        choice = new ChoiceField<>("design.choice", "Design", List.of(), this::words).onCommit(desk::select);
        choice.setToolTipText("The design shown in this window");
        size.setName("design.size");
        // Text at a fractional scale can be a little wider than it was measured.
        size.setBorder(Spacing.around(0, Spacing.TIGHT));
        status.setName("design.status");
        JPanel left = new JPanel(new FlowLayout(FlowLayout.LEADING, Spacing.NEAR, 0));
        left.setOpaque(false);
        JLabel name = new JLabel("Design");
        name.setLabelFor(choice);
        left.add(name);
        left.add(choice);
        left.add(size);
        JButton make = button("New", "design.new", "Add a design to the library", () -> add(NewDesign.standard()));
        left.add(make);
        left.add(button(
                "Duplicate",
                "design.duplicate",
                "Add a copy of this design to the library",
                () -> open.shown()
                        .ifPresent(design -> add(Designs.with(design)
                                .name(design.name() + " (copy)")
                                .design()))));
        add(left, BorderLayout.CENTER);
        add(status, BorderLayout.LINE_END);
        open.onShown(this::show);
        results.onChange(state -> status(open, state));
    }

    private static JButton button(String words, String name, String explanation, Runnable action) {
        JButton button = new JButton(words);
        button.setName(name);
        button.setToolTipText(explanation);
        button.addActionListener(event -> action.run());
        return button;
    }

    private void add(Design design) {
        ThingId id = ThingId.fresh();
        desk.edit("Add design \u201c" + design.name() + "\u201d", List.of(new Change.Put(id, design)));
        desk.select(id);
    }

    private String words(ThingId id) {
        return desk.snapshot().entry(id).map(Entry::name).orElse("");
    }

    /** Offers the library's designs as they stand. */
    void refresh() {
        if (desk.snapshot().revision() == offered) {
            return;
        }
        offered = desk.snapshot().revision();
        choice.setChoices(
                desk.snapshot().ofKind(ThingKind.DESIGN).stream().map(Entry::id).toList());
    }

    private void show(OpenDesign open) {
        refresh();
        open.id().ifPresent(choice::setValue);
        Optional<Design> design = open.shown();
        Optional<SizeColour> colour =
                design.flatMap(known -> IsoSizes.ofTip(known.tipDiameterMm())).map(IsoSize::colour);
        size.setText(design.map(DesignHeader::designation).orElse(""));
        size.setIcon(colour.map(SizeChip::new).orElse(null));
        size.setToolTipText("Size and first taper"
                + colour.map(known -> "; the standard's colour is " + known.word())
                        .orElse(""));
    }

    private static String designation(Design design) {
        double first = design.taper().isEmpty() ? 0 : design.taper().get(0).taper();
        double last = design.taper().isEmpty()
                ? 0
                : design.taper().get(design.taper().size() - 1).taper();
        boolean constant = design.taper().stream().allMatch(segment -> segment.taper() == first);
        String run =
                constant ? "" : last > first ? ", rising taper" : last < first ? ", falling taper" : ", mixed taper";
        return Shown.designation((int) Math.round(design.tipDiameterMm() * 100), first) + run;
    }

    private void status(OpenDesign open, Results.State state) {
        boolean impossible = state.faults().stream()
                .anyMatch(fault -> fault.weight() == org.taperwright.mechanics.work.Fault.Weight.IMPOSSIBLE);
        String words = "";
        if (impossible) {
            words = "Cannot be computed: see the checks";
        } else if (!state.trouble().isEmpty()) {
            words = "Not computed: see the checks";
        } else if (state.outdated() || state.assessment().isEmpty() && open.id().isPresent()) {
            words = "Computing\u2026";
        }
        status.setText(words);
        status.setForeground(impossible ? Ink.fault() : Ink.quiet());
    }
}
