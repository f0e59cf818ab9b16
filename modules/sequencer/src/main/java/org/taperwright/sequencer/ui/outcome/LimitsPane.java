package org.taperwright.sequencer.ui.outcome;

import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JEditorPane;
import javax.swing.JScrollPane;
import org.taperwright.shaping.limits.LimitSection;
import org.taperwright.shaping.limits.StatedLimits;
import org.taperwright.workbench.ui.CautionLine;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.PanelDialog;
import org.taperwright.workbench.ui.Spacing;

/** What shaping neglects and how large that is: the engine's page of limits, to be read in a dialog. */
final class LimitsPane extends JScrollPane {
    private static final int WIDTH = 720;
    private static final int HEIGHT = 520;

    LimitsPane() {
        JEditorPane page = new JEditorPane("text/html", html(StatedLimits.sections()));
        page.setName("outcome.limits.page");
        page.getAccessibleContext().setAccessibleName("What shaping leaves out");
        page.setEditable(false);
        page.setCaretPosition(0);
        page.setBorder(Spacing.around(Spacing.NEAR));
        setViewportView(page);
        setPreferredSize(new Dimension(WIDTH, HEIGHT));
    }

    /** Shows the page in a dialog until it is closed. */
    static void show(Component over) {
        JButton close = new JButton("Close");
        close.setName("outcome.limits.close");
        PanelDialog dialog =
                new PanelDialog(over, "outcome.limits", "What shaping leaves out", new LimitsPane(), List.of(close));
        dialog.closing(close);
        dialog.show();
    }

    /** The page in the theme's font and colours. */
    static String html(List<LimitSection> sections) {
        String font = Ink.font().getFamily();
        StringBuilder html = new StringBuilder("<html><body style='font-family:" + font + ";font-size:"
                + Ink.font().getSize() + "pt;color:" + hex(Ink.text()) + "'>");
        html.append("<p>").append(escaped(CautionLine.SENTENCE)).append("</p>");
        for (LimitSection section : sections) {
            html.append("<h3>").append(escaped(section.title())).append("</h3>");
            section.paragraphs()
                    .forEach(text -> html.append("<p>").append(escaped(text)).append("</p>"));
            table(section.table(), html);
        }
        return html.append("</body></html>").toString();
    }

    private static void table(List<List<String>> lines, StringBuilder html) {
        if (lines.isEmpty()) {
            return;
        }
        html.append("<table cellpadding='3' cellspacing='0'>");
        for (int i = 0; i < lines.size(); i++) {
            html.append("<tr valign='top'>");
            for (String cell : lines.get(i)) {
                html.append(i == 0 ? "<td><b>" : "<td>").append(escaped(cell)).append(i == 0 ? "</b></td>" : "</td>");
            }
            html.append("</tr>");
        }
        html.append("</table>");
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    private static String hex(java.awt.Color colour) {
        return String.format("#%06x", colour.getRGB() & 0xffffff);
    }
}
