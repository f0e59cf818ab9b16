package org.taperwright.workbench.platform;

import java.awt.Dialog;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import java.util.prefs.PreferenceChangeEvent;
import java.util.prefs.PreferenceChangeListener;
import java.util.prefs.Preferences;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JEditorPane;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import org.openide.DialogDescriptor;
import org.openide.DialogDisplayer;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbPreferences;

/** What a person must know before relying on a value shown: on first start, and in the Help menu ever after. */
@ActionID(category = "Help", id = "org.taperwright.workbench.platform.Cautions")
@ActionRegistration(displayName = "Cautions…")
@ActionReference(path = "Menu/Help", position = 100)
public final class Cautions implements ActionListener {
    private static final String READ = "cautions.read";

    static final String TEXT = """
            <html><body style="width: 420px">
            <p><b>Taperwright computes and compares. It does not decide.</b></p>
            <p>What it shows follows from a model and from the descriptions it is given; both can be wrong. It does not
            replace the manufacturer's instructions for use, the rules that hold where you work, or the judgement of a
            licensed clinician. Where they differ from what you see here, follow them.</p>
            <p>Every predicted value says what it is: computed from geometry and a material law, an
            estimate with its band, or an index, of which only the order means something. A reserve is
            shown with its band. No value here promises that an instrument will not break or a root not be harmed.</p>
            <p>The demo library is invented. Its instruments, makers and clinic do not exist.</p>
            <p>Keep whatever could identify a patient out of names and notes.</p>
            </body></html>
            """;

    @Override
    public void actionPerformed(ActionEvent chosen) {
        show();
    }

    static void showOnFirstStart() {
        Preferences kept = NbPreferences.forModule(Cautions.class);
        if (!kept.getBoolean(READ, false)) {
            show();
            kept.putBoolean(READ, true);
        }
    }

    /** Runs something once the cautions have been read, so that no window takes the front from them on a first start. */
    static void whenRead(Runnable then) {
        Preferences kept = NbPreferences.forModule(Cautions.class);
        if (kept.getBoolean(READ, false)) {
            then.run();
            return;
        }
        kept.addPreferenceChangeListener(new PreferenceChangeListener() {
            @Override
            public void preferenceChange(PreferenceChangeEvent change) {
                if (change.getKey().equals(READ)) {
                    kept.removePreferenceChangeListener(this);
                    SwingUtilities.invokeLater(then);
                }
            }
        });
    }

    private static void show() {
        JEditorPane text = new JEditorPane("text/html", TEXT);
        text.setName("cautionText");
        text.setEditable(false);
        text.setFocusable(false);
        text.setOpaque(false);
        text.putClientProperty(JEditorPane.HONOR_DISPLAY_PROPERTIES, true);
        text.setFont(UIManager.getFont("Label.font"));
        text.setForeground(UIManager.getColor("Label.foreground"));
        text.setBorder(BorderFactory.createEmptyBorder(8, 16, 8, 16));
        text.setSize(new Dimension(480, Short.MAX_VALUE));
        JButton read = new JButton("I have read this");
        read.setName("cautionRead");
        DialogDescriptor caution = new DialogDescriptor(text, "Before you use Taperwright");
        caution.setOptions(new Object[] {read});
        caution.setValue(read);
        Dialog dialog = DialogDisplayer.getDefault().createDialog(caution);
        dialog.setName("cautions");
        dialog.setVisible(true);
        dialog.dispose();
    }
}
