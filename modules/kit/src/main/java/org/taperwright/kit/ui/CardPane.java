package org.taperwright.kit.ui;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.print.PrinterException;
import java.io.File;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.JButton;
import javax.swing.JEditorPane;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.filechooser.FileNameExtensionFilter;
import javax.swing.text.BadLocationException;
import javax.swing.text.Document;
import javax.swing.text.html.HTMLEditorKit;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.ShrinkingRow;
import org.taperwright.workbench.ui.Spacing;

/** The kit card as it prints, on paper white in any theme, to print or to save as one HTML file. */
final class CardPane extends JPanel {
    private static final String STYLE = "(?s)<style>.*?</style>";
    private static final String PLAIN_STYLE = "<style>body, p, td, th, h1, h2 { color: #1a1a1a }</style>";

    private final transient Desk desk;
    private final JEditorPane page = new JEditorPane();
    private final Prose told = new Prose("", Ink::fault, true);
    private String html = "";
    private String title = "Kit card";

    CardPane(Desk desk) {
        super(new BorderLayout(0, Spacing.NEAR));
        this.desk = desk;
        setBorder(Spacing.around(Spacing.NEAR));
        page.setName("kit.card");
        page.setEditorKit(new HTMLEditorKit());
        page.setEditable(false);
        page.setBackground(Color.WHITE);
        page.getAccessibleContext().setAccessibleName("Kit card");
        JButton print = new JButton("Print…");
        print.setName("kit.card.print");
        print.addActionListener(event -> print());
        JButton save = new JButton("Save as HTML…");
        save.setName("kit.card.save");
        save.addActionListener(event -> save());
        JPanel buttons = new JPanel(new ShrinkingRow(Spacing.NEAR));
        buttons.setOpaque(false);
        buttons.add(print);
        buttons.add(save);
        JPanel below = new JPanel(new BorderLayout(Spacing.NEAR, 0));
        below.setOpaque(false);
        below.add(buttons, BorderLayout.LINE_START);
        below.add(told, BorderLayout.CENTER);
        add(new JScrollPane(page), BorderLayout.CENTER);
        add(below, BorderLayout.SOUTH);
    }

    /** Shows a card; the page is laid down off the event thread. */
    void show(KitReading reading) {
        String shown = reading.page();
        if (!shown.equals(html)) {
            html = shown;
            title = reading.kit().name();
            desk.compute(this, "Writing the card", progress -> document(shown), outcome -> {
                if (outcome instanceof Outcome.Current<Document> current) {
                    page.setDocument(current.value());
                    page.setCaretPosition(0);
                } else if (outcome instanceof Outcome.Failed<Document> failed) {
                    told.setText("The card is not shown: " + failed.reason());
                }
            });
        }
    }

    /** The page's own style is for browsers and printers; Swing draws plain tables. */
    private static Document document(String html) {
        HTMLEditorKit kit = new HTMLEditorKit();
        Document document = kit.createDefaultDocument();
        try {
            kit.read(new StringReader(html.replaceAll(STYLE, PLAIN_STYLE).replace("<!DOCTYPE html>", "")), document, 0);
        } catch (IOException | BadLocationException impossible) {
            throw new IllegalStateException("a page in memory could not be read", impossible);
        }
        return document;
    }

    private void print() {
        try {
            page.print();
            told.setText("");
        } catch (PrinterException failure) {
            told.setText("Not printed: " + failure.getMessage());
        }
    }

    private void save() {
        JFileChooser chooser = new JFileChooser();
        chooser.setFileFilter(new FileNameExtensionFilter("HTML page", "html"));
        chooser.setSelectedFile(
                new File(title.replaceAll("[^A-Za-z0-9._ -]", " ").strip() + ".html"));
        if (chooser.showSaveDialog(this) != JFileChooser.APPROVE_OPTION) {
            return;
        }
        Path file = chooser.getSelectedFile().toPath();
        boolean agreed = !Files.exists(file)
                || JOptionPane.showConfirmDialog(
                                this,
                                file.getFileName() + " exists. Replace it?",
                                "Replace file",
                                JOptionPane.OK_CANCEL_OPTION)
                        == JOptionPane.OK_OPTION;
        if (agreed) {
            write(file);
        }
    }

    /** Writes the card into a file, or says why not. */
    void write(Path file) {
        try {
            Files.writeString(file, html);
            told.setText("");
        } catch (IOException failure) {
            told.setText(file + " was not saved: " + failure.getMessage());
        }
    }
}
