package org.taperwright.catalogue.ui.exchange;

import java.awt.Component;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.filechooser.FileNameExtensionFilter;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.workbench.api.Desk;

/** Asks where things are to be written, and writes them off the event thread. */
public final class Exporting {
    private final Desk desk;
    private final Component over;

    /** For dialogs over a component. */
    public Exporting(Desk desk, Component over) {
        this.desk = desk;
        this.over = over;
    }

    /** Exports some things; the file's ending chooses the form. */
    public void ask(List<ThingId> ids) {
        Snapshot library = desk.snapshot();
        JFileChooser chooser = new JFileChooser();
        FileNameExtensionFilter table = new FileNameExtensionFilter("Table of instruments or motors (CSV)", "csv");
        FileNameExtensionFilter forms = new FileNameExtensionFilter("Bundle with all that it refers to (JSON)", "json");
        chooser.addChoosableFileFilter(forms);
        chooser.addChoosableFileFilter(table);
        chooser.setFileFilter(forms);
        chooser.setAcceptAllFileFilterUsed(false);
        chooser.setSelectedFile(new File("selection.json"));
        if (chooser.showSaveDialog(over) != JFileChooser.APPROVE_OPTION) {
            return;
        }
        String ending = chooser.getFileFilter() == table ? ".csv" : ".json";
        Path to = withEnding(chooser.getSelectedFile().toPath(), ending);
        boolean agreed = !Files.exists(to)
                || JOptionPane.showConfirmDialog(
                                over,
                                to.getFileName() + " exists. Replace it?",
                                "Replace file",
                                JOptionPane.OK_CANCEL_OPTION)
                        == JOptionPane.OK_OPTION;
        if (agreed) {
            desk.compute(this, "Exporting", new Outgoing(library, ids, to), this::tell);
        }
    }

    private static Path withEnding(Path file, String ending) {
        String name = file.getFileName().toString();
        String bare = name.toLowerCase(Locale.ROOT).matches(".*\\.(csv|json)")
                ? name.substring(0, name.lastIndexOf('.'))
                : name;
        return file.resolveSibling(bare + ending);
    }

    private void tell(Outcome<String> outcome) {
        if (outcome instanceof Outcome.Current<String> current) {
            JOptionPane.showMessageDialog(over, current.value(), "Export", JOptionPane.INFORMATION_MESSAGE);
        } else if (outcome instanceof Outcome.Failed<String> failed) {
            JOptionPane.showMessageDialog(over, failed.reason(), "Not exported", JOptionPane.ERROR_MESSAGE);
        }
    }
}
