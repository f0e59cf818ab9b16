package org.taperwright.kit.ui;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.event.ActionEvent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.shaping.kit.Kit;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.api.Subscription;
import org.taperwright.workbench.ui.EmptyState;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Prose;

/** The kit selected: its pieces, what to discard and to order, what it can serve, its motor, its card. */
public final class KitPanel extends JPanel {
    private static final String KIT = "kit";
    private static final String NOTHING = "nothing";

    private final transient Desk desk;
    private final transient KitEdits edits;
    private final KitHeader header;
    private final PiecesPane pieces;
    private final DiscardPane discards;
    private final OrderPane orders = new OrderPane();
    private final CoveragePane coverage = new CoveragePane();
    private final MotorPane motors;
    private final CardPane card;
    private final JTabbedPane tabs = new JTabbedPane();
    private final Prose refusals = new Prose("", Ink::fault, false);
    private final CardLayout cards = new CardLayout();
    private final transient List<Subscription> subscriptions = new ArrayList<>();

    /** Makes the panel on a desk. */
    public KitPanel(Desk desk) {
        this.desk = desk;
        edits = new KitEdits(desk, this::tell);
        header = new KitHeader(edits, desk::select);
        pieces = new PiecesPane(desk, edits);
        discards = new DiscardPane(edits);
        motors = new MotorPane(edits);
        card = new CardPane(desk);
        setName("kitPanel");
        setLayout(cards);
        tabs.setName("kit.tabs");
        tabs.addTab("Pieces", pieces);
        tabs.addTab("To discard", discards);
        tabs.addTab("To order", orders);
        tabs.addTab("Coverage", coverage);
        tabs.addTab("Motors", motors);
        tabs.addTab("Card", card);
        JPanel shown = new JPanel(new BorderLayout());
        JPanel top = new JPanel(new BorderLayout());
        refusals.setName("kit.refusals");
        refusals.setVisible(false);
        top.add(header, BorderLayout.NORTH);
        top.add(refusals, BorderLayout.SOUTH);
        shown.add(top, BorderLayout.NORTH);
        shown.add(tabs, BorderLayout.CENTER);
        setTransferHandler(new InstrumentDrop(edits::add));
        add(shown, KIT);
        add(
                new EmptyState(
                        "kit.empty",
                        "No kit yet",
                        "A kit holds the pieces a person owns for a purpose, each with its uses. Make one, then drag "
                                + "instruments into it from the Instruments window.",
                        List.of(creating())),
                NOTHING);
    }

    /** Says why an edit was not made; the fields then show again what stands. */
    private void tell(List<Fault> faults) {
        refusals.setText(
                faults.stream().map(fault -> "Not taken: " + fault.sentence()).collect(Collectors.joining("\n")));
        refusals.setVisible(!faults.isEmpty());
        if (!faults.isEmpty()) {
            show(desk.snapshot());
        }
    }

    private Action creating() {
        return new AbstractAction("New kit") {
            @Override
            public void actionPerformed(ActionEvent event) {
                edits.create();
            }
        };
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
            if (desk.selected(ThingKind.KIT).equals(Optional.of(id))) {
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
        Optional<ThingId> id = desk.selected(ThingKind.KIT)
                .or(() -> library.ofKind(ThingKind.KIT).stream().findFirst().map(Entry::id));
        Optional<Kit> kit = id.flatMap(each -> library.thing(each, Kit.class));
        if (kit.isEmpty()) {
            cards.show(this, NOTHING);
            return;
        }
        edits.open(id.orElseThrow());
        header.show(id.orElseThrow(), kit.get(), library);
        cards.show(this, KIT);
        LocalDate today = LocalDate.now();
        desk.compute(
                this,
                "Reading the kit",
                progress -> KitReading.of(id.orElseThrow(), kit.get(), library, today, progress),
                outcome -> {
                    if (outcome instanceof Outcome.Current<KitReading> current) {
                        show(current.value());
                    }
                });
    }

    private void show(KitReading reading) {
        pieces.show(reading);
        discards.show(reading);
        orders.show(reading);
        coverage.show(reading);
        motors.show(reading);
        card.show(reading);
        tabs.setTitleAt(
                1, counted("To discard", reading.card().discard().items().size()));
        tabs.setTitleAt(
                2,
                counted(
                        "To order",
                        reading.orders().stream()
                                .mapToInt(order -> order.lines().size())
                                .sum()));
    }

    private static String counted(String words, int count) {
        return count == 0 ? words : words + " (" + count + ")";
    }
}
