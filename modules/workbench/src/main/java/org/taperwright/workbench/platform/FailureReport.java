package org.taperwright.workbench.platform;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import org.openide.DialogDescriptor;
import org.openide.DialogDisplayer;
import org.openide.util.lookup.ServiceProvider;

/**
 * Tells the user of a failure of the program itself, in plain words and once for each kind, and keeps the details one
 * click away. Takes the place of the platform's own reporter.
 */
@ServiceProvider(service = Handler.class, supersedes = "org.netbeans.core.NbErrorManager")
public final class FailureReport extends Handler {
    private final Set<String> told = ConcurrentHashMap.newKeySet();

    /** Made by the platform. */
    public FailureReport() {
        setLevel(Level.SEVERE);
    }

    @Override
    public void publish(LogRecord entry) {
        Throwable failure = entry.getThrown();
        if (failure != null && isLoggable(entry) && told.add(kind(failure))) {
            String details = details(failure);
            Notices.show(
                    "Something in the program failed",
                    "Your edits up to now are kept. Click for the details to send to whoever maintains the program.",
                    () -> show(details));
        }
    }

    private static String kind(Throwable failure) {
        StackTraceElement[] stack = failure.getStackTrace();
        return failure.getClass().getName() + (stack.length == 0 ? "" : stack[0]);
    }

    private static String details(Throwable failure) {
        StringWriter text = new StringWriter();
        failure.printStackTrace(new PrintWriter(text, true));
        return text.toString();
    }

    private static void show(String details) {
        JTextArea text = new JTextArea(details, 20, 80);
        text.setEditable(false);
        text.setCaretPosition(0);
        DialogDescriptor dialog = new DialogDescriptor(new JScrollPane(text), "What failed");
        dialog.setOptions(new Object[] {DialogDescriptor.CLOSED_OPTION});
        DialogDisplayer.getDefault().notify(dialog);
    }

    @Override
    public void flush() {
        // nothing is held back
    }

    @Override
    public void close() {
        // nothing is held open
    }
}
