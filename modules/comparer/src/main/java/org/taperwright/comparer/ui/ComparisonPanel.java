package org.taperwright.comparer.ui;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import org.taperwright.library.history.Change;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.MeasuredOn;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.api.Subscription;
import org.taperwright.workbench.ui.CautionLine;
import org.taperwright.workbench.ui.CopyMenu;
import org.taperwright.workbench.ui.EmptyState;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.SeriesLooks;
import org.taperwright.workbench.ui.Spacing;

/**
 * Two to six designs side by side, one of them the datum: the table of metrics, the map of flexibility against cutting,
 * sections, profiles and bending curves. Follows every edit of a design, marked as outdated until recomputed.
 */
public final class ComparisonPanel extends JPanel {
    /** Six lines; more can be scrolled to, so that the table keeps its room. */
    private static final int DETAIL_HEIGHT = 112;

    private static final String EMPTY = "empty";
    private static final String FULL = "full";

    private final transient Desk desk;
    private final CardLayout cards = new CardLayout();
    private final ComparisonTableModel model = new ComparisonTableModel();
    private final ComparisonTable table = new ComparisonTable(model);
    private final MetricDetail detail = new MetricDetail();
    private final ComparisonFigures figures;
    private final ComparisonHeader header;
    private final MemberStrip strip;
    private final transient List<Subscription> subscriptions = new ArrayList<>();
    private final TableControls controls = new TableControls(
            model::setView,
            (name, rows) -> apply(comparison().map(saved -> new ComparisonEdits.Edit(name, saved.showing(rows)))));
    private final WhatIfPane whatIf = new WhatIfPane(this::tryOut, this::keep);
    private final transient TrialPath path = new TrialPath();
    private transient Optional<Trial> trial = Optional.empty();
    private Optional<ThingId> shown = Optional.empty();

    /** Makes the panel on a desk. */
    public ComparisonPanel(Desk desk) {
        this.desk = desk;
        figures = new ComparisonFigures(
                desk,
                (name, weights) ->
                        apply(comparison().map(saved -> new ComparisonEdits.Edit(name, saved.weighed(weights)))),
                results -> apply(comparison()
                        .map(saved -> new ComparisonEdits.Edit("Keep the results", saved.keeping(results)))),
                this::measure);
        header = new ComparisonHeader(this::rename, this::makeDatum, this::askForDesigns);
        strip = new MemberStrip(new StripOrders());
        setName("comparisonPanel");
        setLayout(cards);
        add(emptyState(), EMPTY);
        add(content(), FULL);
        setTransferHandler(new DesignDrop(desk, this::take, () -> ""));
        // a table brings a handler of its own, which would turn designs away
        table.setTransferHandler(
                new DesignDrop(desk, this::take, () -> ComparisonData.of(model).tabbed()));
        table.getSelectionModel().addListSelectionListener(event -> explain());
        table.onKey("P", controls::pin);
        table.onKey("H", controls::hideOrShow);
        table.onKey("alt UP", () -> controls.move(-1));
        table.onKey("alt DOWN", () -> controls.move(1));
        table.onKey("ENTER", () -> table.selectedMetric().ifPresent(figures::showBehind));
        table.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2) {
                    table.selectedMetric().ifPresent(figures::showBehind);
                }
            }
        });
        CopyMenu.on(table, "Comparison", () -> ComparisonData.of(model));
    }

    private JPanel content() {
        JPanel top = new JPanel(new BorderLayout(0, Spacing.NEAR));
        top.setOpaque(false);
        top.setBorder(Spacing.around(Spacing.NEAR, Spacing.NEAR));
        JPanel compared = new JPanel(new BorderLayout(0, Spacing.NEAR));
        compared.setOpaque(false);
        compared.add(header, BorderLayout.NORTH);
        compared.add(strip, BorderLayout.CENTER);
        top.add(compared, BorderLayout.NORTH);
        top.add(whatIf, BorderLayout.CENTER);
        table.setPreferredScrollableViewportSize(new Dimension(320, 400));
        JScrollPane scroll = new JScrollPane(table);
        scroll.setColumnHeaderView(table.getTableHeader());
        scroll.setBorder(BorderFactory.createEmptyBorder());
        JPanel left = new JPanel(new BorderLayout());
        left.add(controls, BorderLayout.NORTH);
        left.add(scroll, BorderLayout.CENTER);
        JScrollPane explained = new JScrollPane(detail);
        explained.setBorder(BorderFactory.createEmptyBorder());
        explained.setPreferredSize(new Dimension(320, DETAIL_HEIGHT));
        left.add(explained, BorderLayout.SOUTH);
        JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, left, figures);
        split.setName("comparison.split");
        split.setResizeWeight(1);
        split.setBorder(BorderFactory.createEmptyBorder());
        CautionLine caution = new CautionLine();
        caution.setBorder(Spacing.around(Spacing.TIGHT, Spacing.NEAR));
        JPanel content = new JPanel(new BorderLayout());
        content.add(top, BorderLayout.NORTH);
        content.add(split, BorderLayout.CENTER);
        content.add(caution, BorderLayout.SOUTH);
        return content;
    }

    private EmptyState emptyState() {
        Action compare = new AbstractAction("Choose designs…") {
            @Override
            public void actionPerformed(ActionEvent event) {
                take(DesignChooser.ask(ComparisonPanel.this, "Designs to compare", desk.snapshot(), Set.of()));
            }
        };
        return new EmptyState(
                "comparison.empty",
                "Nothing is compared yet",
                "Choose two to six designs, or drag them here from the library, to see what each gives and takes "
                        + "against one of them, the datum.",
                List.of(compare));
    }

    @Override
    public void addNotify() {
        super.addNotify();
        attach();
    }

    /** Begins to follow the desk; ends when the panel is taken off its window. */
    void attach() {
        subscriptions.add(desk.onChange(snapshot -> {
            refresh();
            figures.followCatalogue();
        }));
        subscriptions.add(desk.onSelect(id -> {
            // of the many things that are selected few are comparisons
            if (!current().equals(shown)) {
                refresh();
            }
        }));
        refresh();
    }

    @Override
    public void removeNotify() {
        subscriptions.forEach(Subscription::close);
        subscriptions.clear();
        super.removeNotify();
    }

    private Optional<ThingId> current() {
        return desk.selected(ThingKind.COMPARISON)
                .or(() -> shown.filter(id -> desk.snapshot().entry(id).isPresent()))
                .or(() -> desk.snapshot().ofKind(ThingKind.COMPARISON).stream()
                        .findFirst()
                        .map(Entry::id));
    }

    private Optional<SavedComparison> comparison() {
        return current().flatMap(id -> desk.snapshot().thing(id, SavedComparison.class));
    }

    private void refresh() {
        Optional<ThingId> current = current();
        boolean another = !current.equals(shown);
        shown = current;
        if (another) {
            trial = Optional.empty();
        }
        Optional<SavedComparison> comparison = comparison();
        cards.show(this, comparison.isPresent() ? FULL : EMPTY);
        comparison.ifPresent(saved -> show(saved, another));
    }

    private void show(SavedComparison comparison, boolean another) {
        List<Member> saved = Member.of(comparison, desk.snapshot());
        header.show(comparison, saved);
        controls.show(saved, comparison.rows());
        SeriesLooks looks = SeriesLooks.of(desk.snapshot());
        strip.show(comparison, saved, looks::of);
        trial = trial.filter(moved -> Trial.in(saved, moved).isPresent());
        if (trial.isEmpty()) {
            whatIf.show(saved, comparison.datum());
            path.follow(trial, model.compared());
        }
        compute(comparison, another);
    }

    /** Computes the comparison as saved, or with the design that is being tried in its place. */
    private void compute(SavedComparison comparison, boolean another) {
        List<Member> saved = Member.of(comparison, desk.snapshot());
        List<Member> members = trial.flatMap(moved -> Trial.in(saved, moved)).orElse(saved);
        boolean current = model.compared()
                .filter(compared -> compared.cameFrom(members, comparison.datum()))
                .isPresent();
        if (current) {
            outdated(false);
            model.compared().ifPresent(this::show);
        } else {
            outdated(true);
            Optional<Trial> asked = trial;
            desk.compute(
                    this,
                    "Comparing " + comparison.name(),
                    ComparisonWork.after(another ? Optional.empty() : model.compared(), members, comparison.datum()),
                    outcome -> deliver(outcome, asked));
        }
    }

    private void tryOut(Optional<Trial> moved) {
        path.follow(moved, model.compared());
        trial = moved;
        comparison().ifPresent(saved -> compute(saved, false));
    }

    /** Puts what is tried into the library as a new design, and compares it too where there is room: one edit. */
    private void keep(Trial kept) {
        Optional<SavedComparison> comparison = comparison();
        Optional<ThingId> id = current();
        if (comparison.isEmpty() || id.isEmpty()) {
            return;
        }
        ThingId fresh = ThingId.fresh();
        List<Change> changes = new ArrayList<>(List.of(new Change.Put(fresh, kept.kept())));
        if (comparison.get().designs().size() < ComparisonEdits.MOST) {
            List<ThingId> designs = new ArrayList<>(comparison.get().designs());
            designs.add(fresh);
            changes.add(new Change.Put(
                    id.get(), comparison.get().of(designs, comparison.get().datum())));
        }
        trial = Optional.empty();
        whatIf.forget();
        desk.edit("Keep " + kept.kept().name(), changes);
    }

    private void outdated(boolean outdated) {
        table.setEnabled(!outdated);
        figures.setOutdated(outdated);
        header.say(!outdated ? "" : model.compared().isPresent() ? "Outdated: computing" : "Computing");
        table.repaint();
    }

    private void deliver(Outcome<Compared> outcome, Optional<Trial> asked) {
        if (outcome instanceof Outcome.Current<Compared> current) {
            asked.ifPresent(moved -> path.add(current.value(), moved.id()));
            show(current.value());
            outdated(false);
        } else if (outcome instanceof Outcome.Outdated<Compared> earlier) {
            show(earlier.value());
        } else if (outcome instanceof Outcome.Failed<Compared> failed) {
            header.say("Outdated: " + failed.reason());
        } else {
            header.say("Outdated: stopped");
        }
    }

    private void show(Compared compared) {
        SeriesLooks looks = SeriesLooks.of(desk.snapshot());
        List<SeriesLook> each =
                compared.members().stream().map(member -> looks.of(member.id())).toList();
        table.setLooks(each);
        model.show(compared);
        comparison()
                .ifPresent(saved ->
                        figures.show(compared, each, saved, Member.of(saved, desk.snapshot()), trial.isPresent()));
        figures.showPath(path.ratios(), trial.map(moved -> looks.of(moved.id())).orElse(new SeriesLook(0)));
        explain();
    }

    /** Explains the selected metric and lets it be pinned or hidden. */
    private void explain() {
        Optional<Metric> metric = table.selectedMetric();
        controls.select(metric);
        detail.show(metric, table.selectedRatios(), inputs());
    }

    private String inputs() {
        return "each design's definition (the table can show it); of its alloy, "
                + model.compared().stream()
                        .flatMap(compared -> IntStream.range(
                                        0, compared.members().size())
                                .mapToObj(compared::assessment)
                                .flatMap(Optional::stream))
                        .map(assessment -> assessment.alloy().label() + " (E "
                                + Shown.number(assessment.alloy().youngMpa()) + " MPa, yield "
                                + Shown.number(assessment.alloy().yieldMpa()) + " MPa)")
                        .distinct()
                        .collect(Collectors.joining(", "))
                + ". Enter shows the curve along the blade.";
    }

    private void apply(Optional<ComparisonEdits.Edit> edit) {
        current()
                .ifPresent(id -> edit.ifPresent(
                        change -> desk.edit(change.name(), List.of(new Change.Put(id, change.after())))));
    }

    /** Keeps other measurements with the comparison; why not, if it cannot be. */
    private List<Fault> measure(String name, List<MeasuredOn> measured) {
        return comparison()
                .map(saved ->
                        desk.tryEdit(name, List.of(new Change.Put(current().orElseThrow(), saved.measuring(measured)))))
                .orElse(List.of());
    }

    private void rename(String name) {
        apply(comparison().flatMap(saved -> ComparisonEdits.rename(saved, name)));
    }

    private void makeDatum(Member member) {
        apply(comparison().flatMap(saved -> ComparisonEdits.datum(saved, member.id(), member.name())));
    }

    private void askForDesigns() {
        comparison()
                .ifPresent(saved -> take(
                        DesignChooser.ask(this, "Designs to add", desk.snapshot(), new HashSet<>(saved.designs()))));
    }

    /**
     * Adds designs to the comparison shown, or begins a new one with them when none is; those new to the library go into it by
     * the same edit.
     */
    void take(List<Member> members) {
        Optional<SavedComparison> comparison = comparison();
        if (comparison.isPresent()) {
            ThingId id = current().orElseThrow();
            ComparisonEdits.add(comparison.get(), members)
                    .ifPresent(edit -> edit(edit.name(), id, edit.after(), members));
        } else if (members.size() >= ComparisonEdits.LEAST) {
            ThingId id = ThingId.fresh();
            List<ThingId> designs =
                    members.stream().limit(ComparisonEdits.MOST).map(Member::id).toList();
            String name = members.get(0).name() + " and others";
            edit("New comparison " + name, id, new SavedComparison(name, designs, designs.get(0), ""), members);
            desk.select(id);
        }
    }

    private void edit(String name, ThingId id, SavedComparison after, List<Member> members) {
        List<Change> changes = new ArrayList<>();
        for (Member member : members) {
            boolean isNew = desk.snapshot().entry(member.id()).isEmpty();
            if (isNew && after.designs().contains(member.id())) {
                member.design().ifPresent(design -> changes.add(new Change.Put(member.id(), design)));
            }
        }
        changes.add(new Change.Put(id, after));
        desk.edit(name, changes);
    }

    private final class StripOrders implements MemberStrip.Orders {
        @Override
        public void move(Member member, int places) {
            apply(comparison().flatMap(saved -> ComparisonEdits.move(saved, member.id(), places, member.name())));
        }

        @Override
        public void datum(Member member) {
            makeDatum(member);
        }

        @Override
        public void open(Member member) {
            if (member.design().isPresent()) {
                desk.open(member.id());
            }
        }

        @Override
        public void remove(Member member) {
            apply(comparison().flatMap(saved -> ComparisonEdits.remove(saved, member.id(), member.name())));
        }
    }
}
