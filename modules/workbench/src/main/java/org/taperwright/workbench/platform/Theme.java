package org.taperwright.workbench.platform;

import javax.swing.UIManager;
import javax.swing.UnsupportedLookAndFeelException;
import org.openide.util.Lookup;
import org.openide.util.NbPreferences;
import org.openide.windows.WindowManager;

/**
 * Light or dark. The choice is kept where the platform looks at its start; the option {@code --laf} goes before it.
 */
enum Theme {
    /** Dark ink on a light ground. */
    LIGHT("com.formdev.flatlaf.FlatLightLaf"),
    /** Light ink on a dark ground. */
    DARK("com.formdev.flatlaf.FlatDarkLaf");

    private final String look;

    Theme(String look) {
        this.look = look;
    }

    /** Whether this theme shows now. */
    boolean shows() {
        return UIManager.getLookAndFeel().getClass().getName().equals(look);
    }

    /** Shows this theme in every open window, and remembers it. */
    void show() {
        if (shows()) {
            return;
        }
        try {
            ClassLoader modules = Lookup.getDefault().lookup(ClassLoader.class);
            UIManager.setLookAndFeel((javax.swing.LookAndFeel)
                    modules.loadClass(look).getDeclaredConstructor().newInstance());
        } catch (ReflectiveOperationException | UnsupportedLookAndFeelException absent) {
            throw new IllegalStateException("the theme is not there: " + look, absent);
        }
        NbPreferences.root().node("laf").put("laf", look);
        WindowManager.getDefault().updateUI();
    }
}
