package org.taperwright.sequencer.ui;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.GridLayout;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.Scrollable;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.SetAngles;
import org.taperwright.shaping.sequence.Step;
import org.taperwright.workbench.ui.FaultList;
import org.taperwright.workbench.ui.Heading;
import org.taperwright.workbench.ui.Spacing;

/** Beside the scene: the selected step's fields and commands, and the checks of the whole sequence. */
final class StepSide extends JPanel implements Scrollable {
    private static final int WIDTH = 284;
    private static final int SCROLL_STEP = 32;

    private final transient SequenceBoard board;
    private final Heading title = new Heading(" ");
    private final StepForm form;
    private final FaultList checks =
            new FaultList("sequence.checks", "The checks find nothing to remark.", PassageWork::place);
    private final JButton add;
    private final JButton other;
    private final JButton up;
    private final JButton down;
    private final JButton remove;

    StepSide(SequenceBoard board) {
        super(new BorderLayout(0, Spacing.APART));
        this.board = board;
        setBorder(Spacing.around(Spacing.NEAR));
        form = new StepForm(new Entries());
        add = button(
                "Add instrument",
                "Adds a step with the instrument selected in the catalogue (Insert)",
                board::insertSelected);
        other = button(
                "Add other step",
                "Adds irrigation (I), patency (P) or recapitulation (R) behind the selected step",
                this::showKinds);
        up = button("Earlier", "Moves the step one place up (Alt+Up)", () -> board.moveBy(-1));
        down = button("Later", "Moves the step one place down (Alt+Down)", () -> board.moveBy(1));
        remove = button("Remove", "Takes the step out (Delete)", board::removeSelected);
        JPanel buttons = new JPanel(new GridLayout(1, 0, Spacing.TIGHT, 0));
        buttons.setOpaque(false);
        List.of(up, down, remove).forEach(buttons::add);
        JPanel step = new JPanel(new BorderLayout(0, Spacing.NEAR));
        step.setOpaque(false);
        step.add(title, BorderLayout.NORTH);
        step.add(form, BorderLayout.CENTER);
        step.add(buttons, BorderLayout.SOUTH);
        JPanel top = new JPanel(new BorderLayout(0, Spacing.NEAR));
        top.setOpaque(false);
        JPanel adding = new JPanel(new GridLayout(0, 2, Spacing.TIGHT, Spacing.TIGHT));
        adding.setOpaque(false);
        adding.add(add);
        adding.add(other);
        top.add(adding, BorderLayout.NORTH);
        top.add(step, BorderLayout.CENTER);
        JPanel remarks = new JPanel(new BorderLayout(0, Spacing.NEAR));
        remarks.setOpaque(false);
        remarks.add(new Heading("Checks"), BorderLayout.NORTH);
        remarks.add(checks, BorderLayout.CENTER);
        checks.onGo(fault -> PassageWork.step(fault).ifPresent(board::select));
        add(top, BorderLayout.NORTH);
        JPanel below = new JPanel(new BorderLayout());
        below.setOpaque(false);
        below.add(remarks, BorderLayout.NORTH);
        add(below, BorderLayout.CENTER);
    }

    private void showKinds() {
        StepMenu.between(board).show(other, 0, other.getHeight());
    }

    private static JButton button(String words, String tip, Runnable action) {
        JButton button = new JButton(new AbstractAction(words) {
            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
            }
        });
        button.setName("step." + words);
        button.setToolTipText(tip);
        button.setMargin(new Insets(2, Spacing.TIGHT, 2, Spacing.TIGHT));
        return button;
    }

    /** Shows the selected step, if there is one. */
    void show(int index, int steps, Optional<Step> step, Optional<Instrument> instrument) {
        title.setText(step.isPresent() ? "Step " + (index + 1) + " of " + steps : "No step yet");
        form.offer(board.files());
        form.show(step, instrument);
        up.setEnabled(index > 0);
        down.setEnabled(index >= 0 && index < steps - 1);
        remove.setEnabled(index >= 0);
    }

    /** Shows what the checks remark. */
    void setRemarks(List<Fault> faults) {
        checks.setFaults(faults);
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return new Dimension(WIDTH, getPreferredSize().height);
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return SCROLL_STEP;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }

    /** Turns entries into edits of the selected step. */
    private final class Entries implements StepForm.Entries {
        @Override
        public void tryDepth(double depthMm) {
            board.tryDepth(board.selected(), depthMm);
        }

        @Override
        public void depth(double depthMm) {
            board.setDepth(board.selected(), depthMm);
        }

        @Override
        public void motion(Motion motion) {
            edit(sequence -> SequenceEdits.motion(sequence, board.selected(), motion));
        }

        @Override
        public void speed(Optional<Double> rpm) {
            edit(sequence -> SequenceEdits.speed(sequence, board.selected(), rpm));
        }

        @Override
        public void torque(Optional<Double> torqueNmm) {
            edit(sequence -> SequenceEdits.torque(sequence, board.selected(), torqueNmm));
        }

        @Override
        public void angles(Optional<SetAngles> angles) {
            edit(sequence -> SequenceEdits.angles(sequence, board.selected(), angles));
        }

        @Override
        public void strokes(int strokes) {
            edit(sequence -> SequenceEdits.strokes(sequence, board.selected(), strokes));
        }

        @Override
        public void between(String field, String value, Step step) {
            edit(sequence -> SequenceEdits.replace(sequence, board.selected(), field, value, step));
        }

        private void edit(java.util.function.Function<Sequence, Optional<SequenceEdits.Edit>> edit) {
            board.apply(board.stored().flatMap(edit));
        }
    }
}
