package org.taperwright.designer.ui;

import java.awt.FlowLayout;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.filechooser.FileNameExtensionFilter;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.mechanics.section.Segment;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.Spacing;

/** A custom outline's points: pasted, or read from a CSV file of x and y. */
final class OutlinePart extends JPanel {
    private static final int ARC_POINTS = 12;
    /** More than any outline of as many points as can be worked on takes. */
    private static final long MOST_BYTES = 1_000_000;

    private final transient Consumer<List<Point>> entered;
    private final JLabel count = new JLabel();
    private final Prose fault = new Prose("", Ink::fault, true);
    private final FormPane rows = new FormPane("design.section.outline.rows");

    OutlinePart(Consumer<List<Point>> entered) {
        super(new java.awt.BorderLayout());
        this.entered = entered;
        setName("design.section.outline");
        setOpaque(false);
        count.setName("design.section.outline.count");
        fault.setName("design.section.outline.fault");
        fault.setVisible(false);
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0));
        buttons.setName("design.section.outline.buttons");
        buttons.setOpaque(false);
        buttons.add(button("Paste", this::paste));
        buttons.add(javax.swing.Box.createHorizontalStrut(Spacing.TIGHT));
        buttons.add(button("Read CSV\u2026", this::readFile));
        rows.row("Outline", count, "A custom section is a closed line through its points")
                .row("Points", buttons, "One point a line: x and y, in any unit; the outline is scaled to its circle")
                .wide(fault);
        add(rows);
    }

    /** Shows a station's shape; families without points show nothing here. */
    void show(SectionShape shape) {
        boolean custom = shape.family().equals("custom");
        rows.setVisible(custom);
        count.setText(shape.points().size() + " points");
        if (!custom) {
            tell("");
        }
    }

    /** The custom shape that follows a shape's present outline: corners of straight pieces, and arcs in short steps. */
    static SectionShape traced(SectionShape shape) {
        if (!(Sections.outline(shape) instanceof OutlineResult.Drawn drawn)) {
            return new SectionShape("custom", Map.of(), 0, 0, shape.points());
        }
        List<Point> points = new ArrayList<>();
        for (Segment piece : drawn.outline().segments()) {
            int steps = piece instanceof Segment.Line ? 1 : ARC_POINTS;
            for (int i = 0; i < steps; i++) {
                points.add(piece.at((double) i / steps));
            }
        }
        return new SectionShape("custom", Map.of(), 0, 0, points);
    }

    /** Takes points from a text, or shows what is wrong with it. */
    void take(String text) {
        PointsText read = PointsText.read(text);
        if (read instanceof PointsText.Points points) {
            tell("");
            entered.accept(points.points());
        } else if (read instanceof PointsText.Refused refused) {
            tell(refused.why());
        }
    }

    private JButton button(String words, Runnable action) {
        JButton button = new JButton(words);
        button.setName("design.section.outline." + words.split(" ")[0].toLowerCase(java.util.Locale.ROOT));
        button.addActionListener(event -> action.run());
        return button;
    }

    private void paste() {
        try {
            take((String) Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor));
        } catch (UnsupportedFlavorException | IOException nothing) {
            tell("The clipboard holds no text; copy lines of x and y first.");
        }
    }

    private void readFile() {
        JFileChooser chooser = new JFileChooser();
        chooser.setFileFilter(new FileNameExtensionFilter("Points as CSV", "csv", "txt"));
        if (chooser.showOpenDialog(this) == JFileChooser.APPROVE_OPTION) {
            takeFile(chooser.getSelectedFile().toPath());
        }
    }

    /** Takes points from a file, or shows what is wrong with it. */
    void takeFile(Path file) {
        try {
            if (Files.size(file) > MOST_BYTES) {
                tell(file.getFileName() + " is larger than 1 MB; expected one point a line, at most 10,000 of them.");
            } else {
                take(Files.readString(file, StandardCharsets.UTF_8));
            }
        } catch (CharacterCodingException other) {
            tell(file.getFileName() + " is no text in UTF-8; expected one point a line.");
        } catch (IOException fault) {
            tell(file.getFileName() + " cannot be read: " + fault.getMessage());
        }
    }

    private void tell(String message) {
        fault.setText(message);
        fault.setVisible(!message.isEmpty());
        revalidate();
    }
}
