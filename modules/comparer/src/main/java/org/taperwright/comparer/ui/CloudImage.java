package org.taperwright.comparer.ui;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.taperwright.workbench.ui.Ink;

/**
 * The pale cloud behind the map, kept as a picture that reaches beyond the map's edges: moving the map moves the picture, and
 * only when its edge comes into sight, or the scale changes, is it drawn anew.
 */
final class CloudImage {
    /** How far the picture reaches beyond the map, as a share of it. */
    private static final double BEYOND = 0.75;

    private static final double DOT = 3.2;
    private static final double PALE = 0.30;
    private static final double PALEST = 0.08;
    private static final double MANY = 1_500;

    /** What a picture was drawn of. */
    private record Drawn(List<Point2D> ratios, MapFrame frame, double scale, boolean dark, BufferedImage image) {}

    private Optional<Drawn> drawn = Optional.empty();

    /** Draws the cloud into a map; ratios are pairs across and up. */
    void draw(Graphics2D g, List<Point2D> ratios, MapFrame frame) {
        if (ratios.isEmpty()) {
            return;
        }
        double scale = g.getTransform().getScaleX();
        Optional<Point2D> move = drawn.filter(known -> known.ratios() == ratios
                        && known.scale() == scale
                        && known.dark() == Ink.dark()
                        && frame.movedFrom(known.frame()))
                .map(known -> move(known.frame(), frame))
                .filter(by -> Math.abs(by.getX()) <= BEYOND * frame.area().getWidth()
                        && Math.abs(by.getY()) <= BEYOND * frame.area().getHeight());
        if (move.isEmpty()) {
            drawn = Optional.of(new Drawn(ratios, frame, scale, Ink.dark(), picture(ratios, frame, scale)));
        }
        Point2D by = move.orElse(new Point2D.Double());
        Rectangle2D area = frame.area();
        Graphics2D clipped = (Graphics2D) g.create();
        clipped.clip(area);
        AffineTransform place = AffineTransform.getTranslateInstance(
                area.getX() - BEYOND * area.getWidth() + by.getX(),
                area.getY() - BEYOND * area.getHeight() + by.getY());
        place.scale(1 / scale, 1 / scale);
        clipped.drawImage(drawn.orElseThrow().image(), place, null);
        clipped.dispose();
    }

    private static Point2D move(MapFrame from, MapFrame to) {
        Point2D before = from.at(1, 1);
        Point2D now = to.at(1, 1);
        return new Point2D.Double(now.getX() - before.getX(), now.getY() - before.getY());
    }

    private static BufferedImage picture(List<Point2D> ratios, MapFrame frame, double scale) {
        Rectangle2D area = frame.area();
        double share = 1 + 2 * BEYOND;
        BufferedImage image = new BufferedImage(
                (int) Math.max(1, Math.ceil(share * area.getWidth() * scale)),
                (int) Math.max(1, Math.ceil(share * area.getHeight() * scale)),
                BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.scale(scale, scale);
        g.translate(BEYOND * area.getWidth() - area.getX(), BEYOND * area.getHeight() - area.getY());
        // the more there are, the paler each: together they stay behind the designs
        g.setColor(Ink.translucent(Ink.text(), Math.max(PALEST, PALE / Math.sqrt(1 + ratios.size() / MANY))));
        for (Point2D ratio : ratios) {
            Point2D place = frame.at(ratio.getX(), ratio.getY());
            g.fill(new Ellipse2D.Double(place.getX() - DOT / 2, place.getY() - DOT / 2, DOT, DOT));
        }
        g.dispose();
        return image;
    }
}
