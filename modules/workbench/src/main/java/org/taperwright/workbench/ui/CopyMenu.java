package org.taperwright.workbench.ui;

import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javax.imageio.ImageIO;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.JPopupMenu;
import javax.swing.KeyStroke;
import javax.swing.filechooser.FileNameExtensionFilter;

/**
 * Copying and saving of what a plot, drawing or table shows: a popup menu by the right button or the menu key, and
 * Ctrl+C where the component has no copying of its own.
 */
public final class CopyMenu {
    private static final double PNG_SCALE = 2;

    private final JComponent of;
    private final String title;
    private final Optional<Supplier<DataTable>> data;

    private CopyMenu(JComponent of, String title, Optional<Supplier<DataTable>> data) {
        this.of = of;
        this.title = title;
        this.data = data;
    }

    /** Puts the menu on a drawing that has no numbers to give. The title names files. */
    public static void on(JComponent component, String title) {
        install(component, title, Optional.empty());
    }

    /** Puts the menu on a plot or table whose numbers go to the clipboard and CSV. The title names files. */
    public static void on(JComponent component, String title, Supplier<DataTable> numbers) {
        install(component, title, Optional.of(numbers));
    }

    private static void install(JComponent component, String title, Optional<Supplier<DataTable>> data) {
        CopyMenu menu = new CopyMenu(component, title, data);
        component.setComponentPopupMenu(menu.popup());
        KeyStroke copy = KeyStroke.getKeyStroke(KeyEvent.VK_C, shortcutKey());
        if (component.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).get(copy) == null) {
            component.getInputMap().put(copy, "copyShown");
            component.getActionMap().put("copyShown", menu.copyPicture());
        }
        KeyStroke open = KeyStroke.getKeyStroke(KeyEvent.VK_F10, InputEvent.SHIFT_DOWN_MASK);
        component.getInputMap().put(open, "openCopyMenu");
        component
                .getActionMap()
                .put(
                        "openCopyMenu",
                        action(
                                "Open menu",
                                () -> component.getComponentPopupMenu().show(component, Spacing.APART, Spacing.APART)));
    }

    private JPopupMenu popup() {
        JPopupMenu popup = new JPopupMenu();
        popup.setName(of.getName() + ".copyMenu");
        popup.add(copyPicture());
        popup.add(action("Save as PNG\u2026", this::savePng));
        popup.add(action("Save as SVG\u2026", this::saveSvg));
        data.ifPresent(numbers -> {
            popup.addSeparator();
            popup.add(action("Copy numbers", () -> clip(numbers.get().tabbed())));
            popup.add(action("Save numbers as CSV\u2026", () -> saveCsv(numbers.get())));
        });
        return popup;
    }

    private Action copyPicture() {
        return action(
                "Copy picture",
                () -> Toolkit.getDefaultToolkit()
                        .getSystemClipboard()
                        .setContents(new ImageSelection(Picture.image(of, PNG_SCALE)), null));
    }

    private void clip(String text) {
        Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(text), null);
    }

    private void savePng() {
        save("png", "PNG picture", path -> {
            if (!ImageIO.write(Picture.image(of, PNG_SCALE), "png", path.toFile())) {
                throw new IOException("no PNG writer in this Java");
            }
        });
    }

    private void saveSvg() {
        save("svg", "SVG drawing", path -> Files.writeString(path, Picture.svg(of)));
    }

    private void saveCsv(DataTable table) {
        save("csv", "CSV table", path -> Files.write(path, table.csv().getBytes(StandardCharsets.UTF_8)));
    }

    private interface Saving {
        void to(Path path) throws IOException;
    }

    private void save(String ending, String kind, Saving saving) {
        JFileChooser chooser = new JFileChooser();
        chooser.setFileFilter(new FileNameExtensionFilter(kind, ending));
        chooser.setSelectedFile(
                new java.io.File(title.replaceAll("[^A-Za-z0-9._ -]", " ").strip() + "." + ending));
        if (chooser.showSaveDialog(of) != JFileChooser.APPROVE_OPTION) {
            return;
        }
        Path path = chooser.getSelectedFile().toPath();
        if (Files.exists(path) && !replaceAgreed(path)) {
            return;
        }
        try {
            saving.to(path);
        } catch (IOException fault) {
            JOptionPane.showMessageDialog(
                    of, path + " was not saved: " + fault.getMessage(), "Not saved", JOptionPane.ERROR_MESSAGE);
        }
    }

    private boolean replaceAgreed(Path path) {
        return JOptionPane.showConfirmDialog(
                        of, path.getFileName() + " exists. Replace it?", "Replace file", JOptionPane.OK_CANCEL_OPTION)
                == JOptionPane.OK_OPTION;
    }

    /** Ctrl, or its like on the present system; without a display there is none to ask. */
    private static int shortcutKey() {
        return GraphicsEnvironment.isHeadless()
                ? InputEvent.CTRL_DOWN_MASK
                : Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    }

    private static Action action(String name, Runnable run) {
        return new AbstractAction(name) {
            @Override
            public void actionPerformed(ActionEvent event) {
                run.run();
            }
        };
    }
}
