package org.taperwright.workbench.ui;

import java.awt.Color;
import java.awt.Font;
import javax.swing.UIManager;

/** The theme's colours and fonts for things that windows draw themselves; asked anew at each painting. */
public final class Ink {
    private Ink() {}

    /** Whether the theme is dark. */
    public static boolean dark() {
        return lightness(paper()) < 0.5;
    }

    /** What drawings stand on. */
    public static Color paper() {
        return theme("Panel.background", new Color(0xf2f2f2));
    }

    /** Text and principal lines. */
    public static Color text() {
        return theme("Label.foreground", new Color(0x1a1a1a));
    }

    /** Secondary text: readable, but quieter than {@link #text}. */
    public static Color quiet() {
        return mix(text(), paper(), 0.3);
    }

    /** Grid lines and outlines that only guide the eye. */
    public static Color grid() {
        return mix(text(), paper(), 0.86);
    }

    /** The theme's one accent. */
    public static Color accent() {
        return theme("Component.accentColor", theme("Table.selectionBackground", new Color(0x2675bf)));
    }

    /** Something impossible; never without a word beside it. */
    public static Color fault() {
        return dark() ? new Color(0xf0817a) : new Color(0xb3261e);
    }

    /** Something unusual; never without a word beside it. */
    public static Color unusual() {
        return dark() ? new Color(0xe0a84a) : new Color(0x8a5a00);
    }

    /** The platform's font. */
    public static Font font() {
        Font font = UIManager.getFont("Label.font");
        return font == null ? new Font(Font.DIALOG, Font.PLAIN, 13) : font;
    }

    /** The platform's font, slightly smaller, for axis numbers and remarks. */
    public static Font smallFont() {
        return font().deriveFont(font().getSize2D() * 0.92f);
    }

    /** The platform's font for headings. */
    public static Font headingFont() {
        return font().deriveFont(Font.BOLD);
    }

    /** A colour part of the way to another: 0 is the first, 1 the second. */
    public static Color mix(Color first, Color second, double share) {
        return new Color(
                between(first.getRed(), second.getRed(), share),
                between(first.getGreen(), second.getGreen(), share),
                between(first.getBlue(), second.getBlue(), share));
    }

    /** The same colour, seen through: 0 is invisible, 1 opaque. */
    public static Color translucent(Color colour, double opacity) {
        return new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), (int) Math.round(255 * opacity));
    }

    private static int between(int first, int second, double share) {
        return (int) Math.round(first + share * (second - first));
    }

    private static double lightness(Color colour) {
        return (0.2126 * colour.getRed() + 0.7152 * colour.getGreen() + 0.0722 * colour.getBlue()) / 255;
    }

    private static Color theme(String key, Color otherwise) {
        Color colour = UIManager.getColor(key);
        return colour == null ? otherwise : colour;
    }
}
