package org.taperwright.workbench.ui;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * How one design's curves look: a colour that colour-blind people can tell apart, and a dash and a marker so that colour
 * never stands alone. Hues after M. Okabe and K. Ito, Color Universal Design (2008), darkened or lightened to stand out
 * on the theme's background.
 *
 * @param place 0, 1, 2 … ; places beyond the palette repeat its colours with other dashes
 */
public record SeriesLook(int place) {
    /** Number of different colours; as many dashes and markers. */
    public static final int DISTINCT = 6;

    private static final List<Color> ON_LIGHT = List.of(
            new Color(0x0072b2),
            new Color(0xc44e00),
            new Color(0x00805c),
            new Color(0xa8468a),
            new Color(0x9a6a00),
            new Color(0x2f8fc4));
    private static final List<Color> ON_DARK = List.of(
            new Color(0x5ab4f0),
            new Color(0xff8a4a),
            new Color(0x35c79b),
            new Color(0xe79bcb),
            new Color(0xf0b93a),
            new Color(0x9fdcff));
    private static final float[][] DASHES = {{}, {8, 3}, {2, 3}, {9, 3, 2, 3}, {14, 4}, {5, 2, 1.5f, 2, 1.5f, 2}};

    /** Colour on the present theme. */
    public Color colour() {
        return (Ink.dark() ? ON_DARK : ON_LIGHT).get(Math.floorMod(place, DISTINCT));
    }

    /** Line with this look's dash. */
    public Stroke stroke(float width) {
        float[] dash = DASHES[Math.floorMod(place + place / DISTINCT, DISTINCT)];
        if (dash.length == 0) {
            return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
        }
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
    }

    /** Marker about the origin, px. */
    public Shape marker(double size) {
        double half = size / 2;
        return switch (Math.floorMod(place, DISTINCT)) {
            case 0 -> new Ellipse2D.Double(-half, -half, size, size);
            case 1 -> new Rectangle2D.Double(-half, -half, size, size);
            case 2 -> polygon(0, -half, half, half, -half, half);
            case 3 -> polygon(0, -half, half, 0, 0, half, -half, 0);
            case 4 -> polygon(-half, -half, half, -half, 0, half);
            default -> polygon(-half, 0, -half / 3, -half, half, -half / 3, half, half / 3, -half / 3, half);
        };
    }

    private static Shape polygon(double... corners) {
        Path2D path = new Path2D.Double();
        path.moveTo(corners[0], corners[1]);
        for (int i = 2; i < corners.length; i += 2) {
            path.lineTo(corners[i], corners[i + 1]);
        }
        path.closePath();
        return path;
    }
}
