package org.taperwright.sequencer.ui;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import org.taperwright.library.store.Arrangement;
import org.taperwright.sequencer.scene.LaneContent;
import org.taperwright.sequencer.scene.SceneContent;
import org.taperwright.sequencer.scene.SequenceScene;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.passage.StepGeometry;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Step;
import org.taperwright.workbench.ui.EmptyState;

/** Holds the scene in a scroll pane, as wide as the window gives room, or says that a canal must be chosen. */
final class SceneHost extends JPanel {
    private static final String SCENE = "scene";
    private static final String NO_CANAL = "noCanal";

    private final transient SequenceBoard board;
    private final transient SequenceScene scene;
    private final CardLayout cards = new CardLayout();
    private final JScrollPane scroll = new JScrollPane();
    private transient Optional<JComponent> view = Optional.empty();

    SceneHost(SequenceBoard board) {
        this.board = board;
        scene = new SequenceScene(board);
        setLayout(cards);
        scroll.setName("sequence.scroll");
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(24);
        scroll.getViewport().addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                scene.setViewSize(
                        scroll.getViewport().getWidth(), scroll.getViewport().getHeight());
            }
        });
        JPanel around = new JPanel(new BorderLayout());
        around.add(scroll, BorderLayout.CENTER);
        add(around, SCENE);
        add(
                new EmptyState(
                        "sequence.noCanal",
                        "Choose a canal",
                        "A sequence is laid out in the canal it is tried in. Choose one above.",
                        List.of()),
                NO_CANAL);
    }

    /** The scene's view can only be made where there is a display, so it is made when the panel gets one. */
    @Override
    public void addNotify() {
        super.addNotify();
        if (view.isEmpty()) {
            JComponent made = scene.makeView();
            made.setName("sequence.scene");
            made.getAccessibleContext().setAccessibleName("Canal and steps");
            made.setFocusable(true);
            SequenceKeys.on(made, board);
            made.setComponentPopupMenu(StepMenu.all(board));
            made.addMouseListener(new MouseAdapter() {
                @Override
                public void mousePressed(MouseEvent event) {
                    made.requestFocusInWindow();
                }
            });
            scroll.setViewportView(made);
            view = Optional.of(made);
            describe();
        }
    }

    /** Shows an arrangement with what was computed of it or of an earlier state. */
    void show(Arrangement arrangement, Optional<PassageWork.Passed> passed, int selected) {
        boolean drawable = arrangement.canal().filter(CanalGeometry::possible).isPresent();
        cards.show(this, drawable ? SCENE : NO_CANAL);
        if (drawable) {
            boolean another = scene.content()
                    .filter(shown -> shown.selected() == selected)
                    .isEmpty();
            scene.show(new SceneContent(arrangement.canal().get(), lanes(arrangement, passed), selected));
            if (another && selected >= 0) {
                view.ifPresent(made -> made.scrollRectToVisible(scene.laneArea(selected)));
            }
            describe();
        }
    }

    /** The scene itself. */
    SequenceScene scene() {
        return scene;
    }

    private void describe() {
        view.ifPresent(made -> scene.content()
                .filter(content -> content.selected() >= 0)
                .map(content -> content.lanes()
                        .get(content.selected())
                        .words(content.lanes().size()))
                .ifPresent(made.getAccessibleContext()::setAccessibleDescription));
    }

    private static List<LaneContent> lanes(Arrangement arrangement, Optional<PassageWork.Passed> passed) {
        List<LaneContent> lanes = new ArrayList<>();
        double workingLength = arrangement.canal().map(Canal::workingLengthMm).orElse(0.0);
        for (int i = 0; i < arrangement.sequence().steps().size(); i++) {
            Step step = arrangement.sequence().steps().get(i);
            int index = i;
            Optional<StepGeometry> geometry = passed.filter(
                            result -> sameInstrument(result, arrangement.sequence(), index))
                    .flatMap(result -> result.steps().get(index));
            boolean outdated = passed.filter(result -> result.arrangement().equals(arrangement))
                    .isEmpty();
            lanes.add(new LaneContent(
                    i, step, arrangement.instruments().get(i), step.depthMm(workingLength), geometry, outdated));
        }
        return lanes;
    }

    /** Whether an earlier result's step is about the same instrument, so that it may stand, marked as outdated. */
    private static boolean sameInstrument(PassageWork.Passed passed, Sequence now, int step) {
        List<Step> then = passed.arrangement().sequence().steps();
        return step < then.size()
                && passed.arrangement().sequence().canal().equals(now.canal())
                && then.get(step).uses().equals(now.steps().get(step).uses());
    }
}
