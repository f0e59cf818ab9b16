package org.taperwright.comparer.ui;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.table.TableCellRenderer;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Spacing;

/** The head of a design's column: its line as drawn in every figure, its name, and beneath the scale of its bars. */
final class MemberHeaderRenderer extends JPanel implements TableCellRenderer {
    private static final int SWATCH = 28;
    private static final String BAR_ENDS = "value and ratio to the datum; bars on the scale written beneath";

    private final transient ComparisonTableModel model;
    private transient SeriesLook look = new SeriesLook(0);
    private String name = "";
    private String beneath = "";

    MemberHeaderRenderer(ComparisonTableModel model) {
        this.model = model;
        setOpaque(true);
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean isSelected, boolean focused, int row, int column) {
        int member = column - ComparisonTableModel.LEADING;
        look = ((ComparisonTable) table).look(member);
        name = String.valueOf(value);
        beneath = beneath(member);
        setToolTipText(name + (beneath.isEmpty() ? "" : ": " + beneath));
        setFont(table.getTableHeader().getFont());
        setBackground(table.getTableHeader().getBackground());
        setForeground(table.getTableHeader().getForeground());
        return this;
    }

    private String beneath(int member) {
        return model.compared()
                .map(compared -> {
                    if (compared.assessment(member).isEmpty()) {
                        return compared.members().get(member).design().isEmpty()
                                ? "cannot be shown"
                                : "cannot be computed: "
                                        + compared.faults(member).stream()
                                                .findFirst()
                                                .map(fault -> fault.sentence())
                                                .orElse("see its checks");
                    }
                    if (compared.datumMember().equals(java.util.Optional.of(member))) {
                        return "datum";
                    }
                    return compared.datumMember().isPresent() ? BAR_ENDS : "value";
                })
                .orElse("");
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(10, 2 * getFontMetrics(getFont()).getHeight() + Spacing.NEAR);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(getBackground());
        g.fillRect(0, 0, getWidth(), getHeight());
        FontMetrics metrics = getFontMetrics(Ink.headingFont());
        int top = Spacing.TIGHT;
        g.setColor(look.colour());
        g.setStroke(look.stroke(2.2f));
        double middle = top + metrics.getHeight() / 2.0;
        g.draw(new Line2D.Double(Spacing.NEAR, middle, Spacing.NEAR + SWATCH, middle));
        g.setColor(getForeground());
        g.setFont(Ink.headingFont());
        int textStart = 2 * Spacing.NEAR + SWATCH;
        g.drawString(
                ShortText.cut(this, g.getFontMetrics(), name, getWidth() - textStart - Spacing.TIGHT),
                textStart,
                top + metrics.getAscent());
        g.setColor(Ink.quiet());
        g.setFont(Ink.smallFont());
        int second = top + metrics.getHeight() + metrics.getAscent();
        if (beneath.equals(BAR_ENDS)) {
            scale(g, second);
        } else {
            g.drawString(
                    ShortText.cut(this, g.getFontMetrics(), beneath, getWidth() - Spacing.NEAR - Spacing.TIGHT),
                    Spacing.NEAR,
                    second);
        }
        g.setColor(Ink.grid());
        g.fillRect(getWidth() - 1, 0, 1, getHeight());
        g.fillRect(0, getHeight() - 1, getWidth(), 1);
        g.dispose();
    }

    /** What the bars' ends and their middle stand for, each above its place. */
    private void scale(Graphics2D g, int baseline) {
        String reach = Shown.number(model.scale().reach());
        FontMetrics metrics = g.getFontMetrics();
        g.drawString("÷ " + reach, Spacing.NEAR, baseline);
        g.drawString("1", (getWidth() - metrics.stringWidth("1")) / 2, baseline);
        g.drawString("× " + reach, getWidth() - Spacing.NEAR - metrics.stringWidth("× " + reach), baseline);
    }
}
