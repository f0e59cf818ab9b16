package org.taperwright.sequencer.scene;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.Locale;
import org.netbeans.api.visual.widget.Scene;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.passage.Third;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Spacing;

/** The head of the scene: depth scale, thirds, where the canal bends, and the canal before the first step. */
final class CanalHead extends SceneWidget {
    private SceneContent content;
    private SceneScale scale;
    private SceneLayout layout;

    CanalHead(Scene scene, SceneContent content, SceneScale scale, SceneLayout layout) {
        super(scene);
        this.content = content;
        this.scale = scale;
        this.layout = layout;
    }

    void show(SceneContent newContent, SceneScale newScale, SceneLayout newLayout) {
        content = newContent;
        scale = newScale;
        layout = newLayout;
        place(0, 0, layout.width(), layout.headHeight());
        setToolTipText(String.format(
                Locale.ROOT,
                "<html>%s. Depths are measured from the coronal reference point.<br>Opening at each depth: the lesser "
                        + "diameter darker than the greater; diameters drawn %.1f times as large as lengths.",
                content.canal().name(),
                scale.exaggeration()));
    }

    @Override
    void draw(Graphics2D g) {
        Thirds.draw(g, content.canal(), scale, Spacing.NEAR + layout.lineHeight(), area().height);
        g.setFont(Ink.smallFont());
        FontMetrics metrics = g.getFontMetrics();
        int baseline = Spacing.NEAR + metrics.getAscent();
        thirdNames(g, baseline);
        bends(g, baseline + layout.lineHeight());
        depths(g, baseline + 2 * layout.lineHeight());
        canal(g);
        labels(g, baseline);
    }

    private void thirdNames(Graphics2D g, int baseline) {
        CanalGeometry canal = new CanalGeometry(content.canal());
        FontMetrics metrics = g.getFontMetrics();
        g.setColor(Ink.quiet());
        for (Third third : Third.values()) {
            double from = scale.x(content.canal().coronalReferenceMm() + third.fromMm(canal));
            double to = scale.x(content.canal().coronalReferenceMm() + third.toMm(canal));
            boolean roomy = metrics.stringWidth(third.word() + " third") <= to - from - Spacing.TIGHT;
            String words = roomy ? third.word() + " third" : cut(metrics, third.word(), to - from - Spacing.TIGHT);
            g.drawString(words, (float) ((from + to - metrics.stringWidth(words)) / 2), baseline);
        }
        double orifice = scale.x(content.canal().coronalReferenceMm());
        g.drawString("orifice", (float) (orifice - metrics.stringWidth("orifice") - Spacing.TIGHT), baseline);
        double end = scale.x(content.canal().workingLengthMm()) + Spacing.TIGHT;
        boolean roomy = end + metrics.stringWidth("working length") <= scale.right();
        g.drawString(roomy ? "working length" : "end", (float) end, baseline);
    }

    private void bends(Graphics2D g, int baseline) {
        FontMetrics metrics = g.getFontMetrics();
        double depth = content.canal().coronalReferenceMm();
        for (CanalPiece piece : content.canal().pieces()) {
            double from = scale.x(depth);
            depth += piece.lengthMm();
            double to = scale.x(depth);
            if (piece.angleDeg() != 0) {
                g.setColor(Ink.mix(Ink.text(), Ink.paper(), 0.5));
                g.setStroke(new BasicStroke(1));
                double y = baseline + 3;
                g.draw(new Line2D.Double(from + 1, y, to - 1, y));
                g.draw(new Line2D.Double(from + 1, y - 3, from + 1, y));
                g.draw(new Line2D.Double(to - 1, y - 3, to - 1, y));
                String words = bend(piece, metrics, to - from - Spacing.TIGHT);
                g.setColor(Ink.quiet());
                g.drawString(words, (float) ((from + to - metrics.stringWidth(words)) / 2), baseline);
            }
        }
    }

    /** Angle and radius of a bend, as much of it as there is room for. */
    private static String bend(CanalPiece piece, FontMetrics metrics, double width) {
        double radius = piece.lengthMm() / Math.toRadians(Math.abs(piece.angleDeg()));
        String angle = String.format(Locale.ROOT, "%.0f°", piece.angleDeg());
        for (String words : new String[] {
            String.format(Locale.ROOT, "bends %s, radius %.1f mm", angle, radius),
            String.format(Locale.ROOT, "%s, radius %.1f mm", angle, radius),
            String.format(Locale.ROOT, "%s, R %.1f", angle, radius)
        }) {
            if (metrics.stringWidth(words) <= width) {
                return words;
            }
        }
        return angle;
    }

    private void depths(Graphics2D g, int baseline) {
        FontMetrics metrics = g.getFontMetrics();
        int every = scale.pixelsPerMm() >= 1.6 * metrics.stringWidth("00") ? 1 : scale.pixelsPerMm() >= 12 ? 2 : 5;
        for (int depth = (int) Math.ceil(scale.fromMm()); depth <= scale.toMm(); depth++) {
            double x = scale.x(depth);
            g.setColor(Ink.mix(Ink.text(), Ink.paper(), 0.5));
            g.setStroke(new BasicStroke(1));
            g.draw(new Line2D.Double(x, baseline + 3, x, baseline + (depth % every == 0 ? 7 : 5)));
            if (depth % every == 0) {
                String words = Integer.toString(depth);
                g.setColor(Ink.quiet());
                g.drawString(words, (float) (x - metrics.stringWidth(words) / 2.0), baseline);
            }
        }
    }

    private void canal(Graphics2D g) {
        WideningSoFar before = new WideningSoFar(content, 0);
        Openings.draw(g, before, content.canal(), scale, layout.axisInHead());
    }

    private void labels(Graphics2D g, int baseline) {
        FontMetrics metrics = g.getFontMetrics();
        int width = layout.left() - 2 * Spacing.NEAR;
        g.setColor(Ink.quiet());
        g.drawString(
                cut(metrics, "Depth from reference (mm)", width), Spacing.NEAR, baseline + 2 * layout.lineHeight());
        Canal canal = content.canal();
        int first = (int) (layout.axisInHead() - 1.5 * layout.lineHeight()) + metrics.getAscent();
        String working = String.format(Locale.ROOT, "working length %.1f mm", canal.workingLengthMm());
        String drawn = String.format(Locale.ROOT, "diameters drawn × %.1f", scale.exaggeration());
        g.drawString(cut(metrics, working, width), Spacing.NEAR, first + layout.lineHeight());
        g.drawString(cut(metrics, drawn, width), Spacing.NEAR, first + 2 * layout.lineHeight());
        g.setFont(Ink.font());
        g.setColor(Ink.text());
        g.drawString(cut(g.getFontMetrics(), canal.name(), width), Spacing.NEAR, first);
    }
}
