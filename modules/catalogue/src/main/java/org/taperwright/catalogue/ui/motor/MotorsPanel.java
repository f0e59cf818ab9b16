package org.taperwright.catalogue.ui.motor;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import org.taperwright.library.history.Change;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.instrument.Window;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.api.Subscription;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.EmptyState;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.ShrinkingRow;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.TextTable;

/** A motor with its ranges, and the powered instruments it can and cannot drive, with the reasons. */
public final class MotorsPanel extends JPanel {
    private static final String MOTOR = "motor";
    private static final String NOTHING = "nothing";

    private final transient Desk desk;
    private final ChoiceField<Entry> motors = new ChoiceField<>("motor.choice", "Motor", List.of(), Entry::name);
    private final MotorForm form;
    private final TextTable driven = table("motor.driven", "Instruments the motor drives");
    private final TextTable others = table("motor.others", "Instruments the motor cannot drive");
    private final JTabbedPane tabs = new JTabbedPane();
    private final CardLayout cards = new CardLayout();
    private final transient List<Subscription> subscriptions = new ArrayList<>();

    /** Makes the panel on a desk. */
    public MotorsPanel(Desk desk) {
        this.desk = desk;
        setLayout(cards);
        setName("motorsPanel");
        form = new MotorForm(desk);
        motors.onCommit(chosen -> desk.select(chosen.id()));
        JButton create = new JButton("New motor");
        create.setName("motor.new");
        create.addActionListener(event -> create());
        JPanel header = new JPanel(new ShrinkingRow(Spacing.NEAR));
        header.setBorder(Spacing.around(Spacing.NEAR));
        header.add(motors);
        header.add(create);
        JPanel left = new JPanel(new BorderLayout());
        left.add(header, BorderLayout.NORTH);
        left.add(form, BorderLayout.CENTER);
        tabs.setName("motor.tabs");
        tabs.addTab("Drives", driven.scrolled());
        tabs.addTab("Cannot drive", others.scrolled());
        JPanel right = new JPanel(new BorderLayout(0, Spacing.TIGHT));
        right.setBorder(Spacing.around(Spacing.NEAR));
        right.add(tabs, BorderLayout.CENTER);
        right.add(
                new Prose(
                        "By what the makers state of instrument and motor, as entered. Their instructions go before this list.",
                        Ink::quiet,
                        true),
                BorderLayout.SOUTH);
        JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, left, right);
        split.setResizeWeight(0.35);
        split.setBorder(javax.swing.BorderFactory.createEmptyBorder());
        add(split, MOTOR);
        add(
                new EmptyState(
                        "motor.empty",
                        "No motor yet",
                        "Enter a motor's ranges to see which instruments it can drive. Tables of motors come in through "
                                + "File, Import.",
                        List.of(creating())),
                NOTHING);
    }

    private static TextTable table(String name, String what) {
        return new TextTable(
                name, what, List.of("Instrument", "Settings both allow", "Remarks"), List.of(190, 300, 310));
    }

    private Action creating() {
        return new AbstractAction("New motor") {
            @Override
            public void actionPerformed(ActionEvent event) {
                create();
            }
        };
    }

    private void create() {
        int number = desk.snapshot().ofKind(ThingKind.MOTOR).size() + 1;
        ThingId id = ThingId.fresh();
        Motor made = new Motor(
                "Motor " + number,
                "",
                new Window(100, 1000),
                new Window(5, 50),
                Optional.empty(),
                true,
                false,
                "Ranges are a beginning only: enter those of its maker.");
        if (desk.edit("Add " + made.name(), List.of(new Change.Put(id, made)))) {
            desk.select(id);
        }
    }

    @Override
    public void addNotify() {
        super.addNotify();
        attach();
    }

    /** Begins to follow the desk; ends when the panel is taken off its window. */
    void attach() {
        subscriptions.add(desk.onChange(this::show));
        subscriptions.add(desk.onSelect(id -> {
            if (desk.selected(ThingKind.MOTOR).equals(Optional.of(id))) {
                show(desk.snapshot());
            }
        }));
        show(desk.snapshot());
    }

    @Override
    public void removeNotify() {
        subscriptions.forEach(Subscription::close);
        subscriptions.clear();
        super.removeNotify();
    }

    private void show(Snapshot library) {
        List<Entry> all = library.ofKind(ThingKind.MOTOR);
        Optional<Entry> shown = desk.selected(ThingKind.MOTOR)
                .flatMap(library::entry)
                .or(() -> all.stream().findFirst());
        cards.show(this, shown.isPresent() ? MOTOR : NOTHING);
        shown.ifPresent(entry -> {
            motors.setChoices(all);
            all.stream()
                    .filter(each -> each.id().equals(entry.id()))
                    .findFirst()
                    .ifPresent(motors::setValue);
            Motor motor = (Motor) entry.thing();
            form.show(entry.id(), motor);
            desk.compute(this, "Matching instruments", new DrivenList(motor, library), outcome -> {
                if (outcome instanceof Outcome.Current<DrivenList.Rows> current) {
                    show(current.value());
                }
            });
        });
    }

    private void show(DrivenList.Rows rows) {
        driven.show(rows.driven());
        others.show(rows.others());
        tabs.setTitleAt(0, "Drives (" + rows.driven().size() + ")");
        tabs.setTitleAt(1, "Cannot drive (" + rows.others().size() + ")");
    }
}
