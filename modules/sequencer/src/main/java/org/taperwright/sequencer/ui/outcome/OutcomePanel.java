package org.taperwright.sequencer.ui.outcome;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import org.taperwright.library.store.Arrangement;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.uncertainty.LatinHypercube;
import org.taperwright.mechanics.work.BoundedCache;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.sequencer.outcome.BandsWork;
import org.taperwright.sequencer.outcome.OutcomeRows;
import org.taperwright.sequencer.outcome.Shaped;
import org.taperwright.sequencer.outcome.ShapingWork;
import org.taperwright.shaping.passage.spread.BandedQuantity;
import org.taperwright.shaping.passage.spread.ShapingBands;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.ShrinkingRow;
import org.taperwright.workbench.ui.Spacing;

/**
 * Beneath the lanes: what the steps do stroke by stroke. Shapes the canal in the background, then computes the bands; a newer edit
 * supersedes either. Shows numbers of an earlier state of the same sequence as outdated, and never those of another.
 */
public final class OutcomePanel extends JPanel {
    private static final int KEPT = 8;

    private final transient Desk desk;
    private final transient Consumer<List<Fault>> remarks;
    private final transient BoundedCache<BandsWork.Key, ShapingBands> kept = new BoundedCache<>(KEPT);
    private final OutcomeTable table;
    private final CurvesPane curves = new CurvesPane();
    private final FinishPane finish = new FinishPane();
    private final UnknownsPane unknowns = new UnknownsPane();
    private final ManyCanalsPane many;
    private final RunLine line = new RunLine("outcome.state");
    private final JCheckBox thirds = new JCheckBox("Thirds of every step");
    private final JLabel legend = new JLabel(" ");
    private boolean open = true;
    private boolean settled;
    private int selected;
    private transient Optional<ThingId> shown = Optional.empty();
    private transient Optional<Arrangement> arrangement = Optional.empty();
    private transient Optional<Arrangement> asked = Optional.empty();
    private transient Optional<Shaped> shaped = Optional.empty();
    private transient Optional<ShapingBands> bands = Optional.empty();
    private transient Optional<WatchedWork<?>> running = Optional.empty();

    /**
     * Makes the panel.
     *
     * @param select is told which step a person selects
     * @param remarks is told what to beware of, whenever that changes
     */
    public OutcomePanel(Desk desk, IntConsumer select, Consumer<List<Fault>> remarks) {
        super(new BorderLayout());
        this.desk = desk;
        this.remarks = remarks;
        setName("outcome");
        table = new OutcomeTable(select);
        many = new ManyCanalsPane(desk);
        thirds.setName("outcome.thirds");
        thirds.setToolTipText(
                "Shows the coronal, middle and apical third of every step, not of the selected one alone");
        thirds.setOpaque(false);
        thirds.addActionListener(event -> showNumbers());
        JTabbedPane tabs = new JTabbedPane(JTabbedPane.TOP, JTabbedPane.SCROLL_TAB_LAYOUT);
        tabs.setName("outcome.tabs");
        tabs.getAccessibleContext().setAccessibleName("Outcome of the sequence");
        tabs.addTab("What each step does", steps());
        tabs.addTab("Along the canal", curves);
        tabs.addTab("Cleaning and packing", finish);
        tabs.addTab("What we do not know", unknowns);
        tabs.addTab("Many canals", many);
        JPanel trailing = new JPanel(new BorderLayout());
        trailing.setOpaque(false);
        trailing.setBorder(Spacing.around(0, Spacing.NEAR));
        trailing.add(line, BorderLayout.EAST);
        tabs.putClientProperty("JTabbedPane.trailingComponent", trailing);
        add(tabs, BorderLayout.CENTER);
    }

    private JPanel steps() {
        JPanel below = new JPanel(new ShrinkingRow(Spacing.APART));
        below.setOpaque(false);
        below.setBorder(Spacing.around(Spacing.TIGHT, Spacing.NEAR));
        legend.setName("outcome.legend");
        legend.setFont(Ink.smallFont());
        below.add(thirds);
        below.add(legend);
        JPanel steps = new JPanel(new BorderLayout());
        steps.setOpaque(false);
        steps.add(table.scrolled(), BorderLayout.CENTER);
        steps.add(below, BorderLayout.SOUTH);
        return steps;
    }

    /** Opens or closes it: closed, it computes nothing. */
    public void setOpen(boolean opened) {
        if (opened != open) {
            open = opened;
            if (open) {
                follow();
            } else {
                stop();
                asked = Optional.empty();
            }
        }
    }

    /** Stops what is being computed. */
    void stop() {
        running.ifPresent(WatchedWork::stop);
    }

    /**
     * Follows a sequence.
     *
     * @param id which sequence it is
     * @param now how it stands
     * @param settled whether it stands so in the library, and is not a depth that is only being tried
     * @param selected the selected step, -1 for none
     */
    public void show(ThingId id, Arrangement now, boolean settled, int selected) {
        boolean another = !shown.equals(Optional.of(id));
        if (another) {
            stop();
            shaped = Optional.empty();
            bands = Optional.empty();
            asked = Optional.empty();
            remarks.accept(List.of());
        }
        boolean selectedAlone = !another && this.settled == settled && arrangement.equals(Optional.of(now));
        shown = Optional.of(id);
        arrangement = Optional.of(now);
        this.settled = settled;
        this.selected = selected;
        if (selectedAlone) {
            showNumbers();
            return;
        }
        many.show(settled ? arrangement : many.following(), another);
        follow();
    }

    private void follow() {
        if (!open || arrangement.isEmpty()) {
            return;
        }
        showNumbers();
        if (!current()) {
            shape();
        } else if (settled && bands.filter(ShapingBands::whole).isEmpty() && running.isEmpty()) {
            band();
        }
    }

    private boolean current() {
        return shaped.map(Shaped::arrangement).equals(arrangement);
    }

    private void shape() {
        if (asked.equals(arrangement)) {
            return;
        }
        asked = arrangement;
        run("Shaping " + words(), new ShapingWork(arrangement.orElseThrow()), result -> {
            shaped = Optional.of(result);
            bands = Optional.empty();
            line.say("");
            remarks.accept(result.remarks(false));
            if (current()) {
                showNumbers();
                if (settled) {
                    band();
                }
            } else {
                asked = Optional.empty();
                follow();
            }
        });
    }

    /** The bands by a few samples, and then by all. */
    private void band() {
        if (shaped.flatMap(Shaped::run).isEmpty()) {
            return;
        }
        int samples = bands.isEmpty() ? ShapingBands.FEW : LatinHypercube.SAMPLES;
        run("Bands of " + words(), new BandsWork(shaped.get(), samples, kept), result -> {
            bands = Optional.of(result);
            line.say("");
            showNumbers();
            remarks.accept(shaped.orElseThrow().remarks(true));
            if (!result.whole()) {
                band();
            }
        });
    }

    private String words() {
        return arrangement.orElseThrow().sequence().name();
    }

    /** Runs work in this panel's one slot: whatever ran before is no longer wanted. */
    private <T> void run(String label, org.taperwright.workbench.api.Work<T> work, Consumer<T> then) {
        boolean ofBands = work instanceof BandsWork;
        WatchedWork<T> watched = new WatchedWork<>(
                work, (fraction, what) -> line.running(fraction, (ofBands ? "Bands: " : "") + what, this::stop));
        running = Optional.of(watched);
        line.running(0, ofBands ? "Bands" : "Shaping", this::stop);
        desk.<T>compute(this, label, watched, outcome -> {
            if (!running.equals(Optional.of(watched))) {
                return;
            }
            running = Optional.empty();
            if (outcome instanceof Outcome.Current<T> current) {
                then.accept(current.value());
            } else {
                asked = Optional.empty();
                String why = outcome instanceof Outcome.Failed<T> failed ? failed.reason() : "Stopped";
                line.offer(ofBands ? "No bands: " + why : why, "Compute", this::follow);
                showNumbers();
            }
        });
    }

    private void showNumbers() {
        boolean outdated = shaped.isPresent() && !current();
        table.show(
                shaped.map(result -> OutcomeRows.of(result, bands, place -> thirds.isSelected() || place == selected))
                        .orElse(List.of()),
                selected);
        table.setEnabled(!outdated);
        legend.setText("Beneath a number: its 5 to 95 % over what is not known"
                + bands.filter(found -> !found.whole())
                        .map(found -> ", a first look by " + found.samples() + " samples")
                        .orElse(""));
        curves.show(shaped, selected, outdated);
        finish.show(shaped, volumeBand(), outdated);
        unknowns.show(shaped, bands, outdated);
        if (outdated && running.isEmpty()) {
            line.warn("Outdated");
        }
    }

    private String volumeBand() {
        return bands.flatMap(found -> found.quantities().stream()
                        .filter(banded -> banded.quantity().name().equals("volumeMm3"))
                        .findFirst())
                .flatMap(BandedQuantity::band)
                .map(band -> Shown.band(band) + " mm³")
                .orElse("");
    }
}
