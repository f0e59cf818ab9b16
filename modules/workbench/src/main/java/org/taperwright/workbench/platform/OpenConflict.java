package org.taperwright.workbench.platform;

import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.event.ChangeListener;
import org.openide.util.ChangeSupport;
import org.openide.util.Lookup;
import org.openide.util.lookup.ServiceProvider;
import org.openide.windows.WindowManager;
import org.taperwright.library.history.Choice;
import org.taperwright.library.history.EditHistory;
import org.taperwright.library.history.StoringEvent;
import org.taperwright.workbench.ui.ConflictPanel;
import org.taperwright.workbench.ui.PanelDialog;

/**
 * The question whose version stands when two programs changed one thing, for as long as nobody has answered it. Put aside it
 * decides nothing: it can be taken up again from the status line and the Edit menu. Used on the event thread.
 */
@ServiceProvider(service = OpenConflict.class)
public final class OpenConflict {
    private final ChangeSupport listeners = new ChangeSupport(this);
    private Optional<Question> question = Optional.empty();

    private record Question(EditHistory history, StoringEvent.Conflicting conflict) {}

    /** The one of the running program. */
    static OpenConflict get() {
        return Lookup.getDefault().lookup(OpenConflict.class);
    }

    /** Whether an answer is waited for. */
    boolean open() {
        return question.isPresent();
    }

    /** Calls back when a question comes up or is answered. */
    void onChange(ChangeListener listener) {
        listeners.addChangeListener(listener);
    }

    /** Takes a question up and asks it. */
    void put(EditHistory history, StoringEvent.Conflicting conflict) {
        question = Optional.of(new Question(history, conflict));
        listeners.fireChange();
        ask();
    }

    /** Asks; who closes the dialog, or decides later, has decided nothing. */
    void ask() {
        question.ifPresent(asked -> {
            JButton later = named("Decide later", "conflict.later");
            JButton theirs = named("Take theirs", "conflict.theirs");
            JButton mine = named("Keep mine", "conflict.mine");
            PanelDialog dialog = new PanelDialog(
                    WindowManager.getDefault().getMainWindow(),
                    "conflictDialog",
                    "Two versions",
                    new ConflictPanel(asked.conflict().edit(), asked.conflict().clashes()),
                    List.of(later, theirs, mine));
            dialog.closing(later);
            dialog.closing(theirs).addActionListener(event -> answer(asked, Choice.THEIRS));
            dialog.closing(mine).addActionListener(event -> answer(asked, Choice.MINE));
            dialog.show();
        });
    }

    private void answer(Question asked, Choice choice) {
        if (question.filter(asked::equals).isPresent()) {
            question = Optional.empty();
            listeners.fireChange();
            asked.history().resolve(choice);
        }
    }

    private static JButton named(String words, String name) {
        JButton button = new JButton(words);
        button.setName(name);
        return button;
    }
}
