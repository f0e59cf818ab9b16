package org.taperwright.sequencer.ui;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.prefs.Preferences;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.ScrollPaneConstants;
import org.taperwright.library.store.Arrangement;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.sequencer.scene.SequenceScene;
import org.taperwright.sequencer.ui.outcome.OutcomePanel;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Step;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.api.Subscription;
import org.taperwright.workbench.ui.CautionLine;
import org.taperwright.workbench.ui.EmptyState;
import org.taperwright.workbench.ui.Spacing;

/** The canal along its length, one lane for each step; the selected step's fields and the checks beside it. */
public final class SequencePanel extends JPanel {
    private static final String EMPTY = "empty";
    private static final String FULL = "full";
    private static final int LEAST_SIDE = 260;
    private static final int LEAST_SCENE = 200;

    private final transient Desk desk;
    private final transient SequenceBoard board;
    private final CardLayout cards = new CardLayout();
    private final SequenceHeader header;
    private final SceneHost host;
    private final StepSide side;
    private final OutcomePanel outcome;
    private final transient Preferences settings;
    private final transient List<Subscription> subscriptions = new ArrayList<>();
    private transient Optional<PassageWork.Passed> passed = Optional.empty();
    private transient List<Fault> shapingRemarks = List.of();

    /**
     * Makes the panel on a desk.
     *
     * @param settings keeps whether the outcome is open
     */
    public SequencePanel(Desk desk, Preferences settings) {
        this.desk = desk;
        this.settings = settings;
        board = new SequenceBoard(desk, this::refresh);
        host = new SceneHost(board);
        side = new StepSide(board);
        header = new SequenceHeader(
                name -> board.apply(board.stored().flatMap(s -> SequenceEdits.rename(s, name))),
                canal -> board.apply(board.stored().flatMap(s -> SequenceEdits.canal(s, canal, desk.snapshot()))),
                motor -> board.apply(board.stored().flatMap(s -> SequenceEdits.motor(s, motor, desk.snapshot()))));
        outcome = new OutcomePanel(desk, board::select, this::remark);
        setName("sequencePanel");
        setLayout(cards);
        add(emptyState(), EMPTY);
        add(content(), FULL);
    }

    private JPanel content() {
        header.setBorder(Spacing.around(Spacing.NEAR));
        JScrollPane right = new JScrollPane(
                side, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        right.setBorder(BorderFactory.createEmptyBorder());
        right.setMinimumSize(new Dimension(LEAST_SIDE, LEAST_SIDE));
        host.setMinimumSize(new Dimension(LEAST_SCENE, LEAST_SCENE));
        JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, host, right);
        split.setName("sequence.split");
        split.setResizeWeight(1);
        split.setBorder(BorderFactory.createEmptyBorder());
        CautionLine caution = new CautionLine();
        caution.setBorder(Spacing.around(Spacing.TIGHT, Spacing.NEAR));
        OutcomeSplit lanesAndOutcome = new OutcomeSplit(split, outcome, settings);
        JPanel top = new JPanel(new BorderLayout());
        JPanel toggle = new JPanel(new FlowLayout(FlowLayout.TRAILING, Spacing.NEAR, Spacing.NEAR));
        toggle.add(lanesAndOutcome.toggle());
        top.add(header, BorderLayout.CENTER);
        top.add(toggle, BorderLayout.EAST);
        JPanel content = new JPanel(new BorderLayout());
        content.add(top, BorderLayout.NORTH);
        content.add(lanesAndOutcome, BorderLayout.CENTER);
        content.add(caution, BorderLayout.SOUTH);
        return content;
    }

    private EmptyState emptyState() {
        Action begin = new AbstractAction("New sequence") {
            @Override
            public void actionPerformed(ActionEvent event) {
                board.begin();
            }
        };
        return new EmptyState(
                "sequence.empty",
                "No sequence yet",
                "Begin one, then drag instruments into it from the library or the instruments table.",
                List.of(begin));
    }

    @Override
    public void addNotify() {
        super.addNotify();
        attach();
    }

    /** Begins to follow the desk; ends when the panel is taken off its window. */
    void attach() {
        subscriptions.add(desk.onChange(snapshot -> refresh()));
        subscriptions.add(desk.onSelect(id -> refresh()));
        refresh();
    }

    @Override
    public void removeNotify() {
        subscriptions.forEach(Subscription::close);
        subscriptions.clear();
        super.removeNotify();
    }

    /** What is asked of the sequence. */
    SequenceBoard board() {
        return board;
    }

    /** What is drawn. */
    SequenceScene scene() {
        return host.scene();
    }

    private void refresh() {
        board.follow();
        Optional<Sequence> sequence = board.sequence();
        cards.show(this, sequence.isPresent() ? FULL : EMPTY);
        sequence.ifPresent(this::show);
    }

    private void show(Sequence sequence) {
        Arrangement arrangement = Arrangement.of(sequence, desk.snapshot());
        boolean current = passed.filter(result -> result.arrangement().equals(arrangement))
                .isPresent();
        header.show(sequence, desk.snapshot());
        header.say(current ? "" : "Outdated: computing");
        host.show(arrangement, passed, board.selected());
        int selected = board.selected();
        Optional<Step> step =
                selected < 0 ? Optional.empty() : Optional.of(sequence.steps().get(selected));
        side.show(
                selected,
                sequence.steps().size(),
                step,
                selected < 0 ? Optional.empty() : arrangement.instruments().get(selected));
        board.shown().ifPresent(id -> outcome.show(id, arrangement, board.settled(), selected));
        if (!current) {
            desk.compute(this, "Passing " + sequence.name(), new PassageWork(arrangement), this::deliver);
        }
    }

    private void deliver(Outcome<PassageWork.Passed> outcome) {
        if (outcome instanceof Outcome.Current<PassageWork.Passed> current) {
            passed = Optional.of(current.value());
            showRemarks();
            header.say("");
            host.show(current.value().arrangement(), passed, board.selected());
        } else if (outcome instanceof Outcome.Failed<PassageWork.Passed> failed) {
            header.say("Outdated: " + failed.reason());
        } else if (outcome instanceof Outcome.Cancelled<PassageWork.Passed>) {
            header.say("Outdated: stopped");
        }
    }

    private void remark(List<Fault> remarks) {
        shapingRemarks = List.copyOf(remarks);
        showRemarks();
    }

    /** What the rules remark, and what the strokes do beyond that. */
    private void showRemarks() {
        List<Fault> remarks =
                new ArrayList<>(passed.map(PassageWork.Passed::remarks).orElse(List.of()));
        shapingRemarks.stream().filter(remark -> !remarks.contains(remark)).forEach(remarks::add);
        side.setRemarks(remarks);
    }
}
