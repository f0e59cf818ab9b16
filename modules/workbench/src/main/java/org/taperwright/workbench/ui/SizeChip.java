package org.taperwright.workbench.ui;

import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import java.util.Map;
import javax.swing.Icon;
import javax.swing.JLabel;
import org.taperwright.mechanics.design.SizeColour;

/**
 * The small colour chip of a size by ISO 3630-1. It never stands alone: {@link #label} puts the size beside it, and the
 * colour's word is its accessible description. The tints are our own renderings of the standard's colour words.
 *
 * @param colourWord the standard's colour in lower case, such as {@code red}; any other word draws an empty chip
 */
public record SizeChip(String colourWord) implements Icon {
    private static final int SIDE = 11;
    private static final Map<String, Color> TINTS = Map.of(
            "pink", new Color(0xf29bb8),
            "grey", new Color(0x9a9a9a),
            "purple", new Color(0x7a4fa3),
            "white", new Color(0xffffff),
            "yellow", new Color(0xf2cd1d),
            "red", new Color(0xc8312b),
            "blue", new Color(0x2a62b8),
            "green", new Color(0x2f8a45),
            "black", new Color(0x1c1c1c));

    /** The chip of one of the standard's colours. */
    public SizeChip(SizeColour colour) {
        this(colour.word());
    }

    /** A label of chip and number, with the colour's word for assistive technology and as tooltip. */
    public static JLabel label(String colourWord, String number) {
        JLabel label = new JLabel(number, new SizeChip(colourWord), JLabel.LEADING);
        label.setIconTextGap(Spacing.TIGHT);
        label.setToolTipText("Size " + number + ", " + colourWord);
        label.getAccessibleContext().setAccessibleDescription("size " + number + ", " + colourWord);
        return label;
    }

    @Override
    public void paintIcon(Component on, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        RoundRectangle2D chip = new RoundRectangle2D.Double(x + 0.5, y + 0.5, SIDE - 1, SIDE - 1, 3, 3);
        Color tint = TINTS.get(colourWord);
        if (tint != null) {
            g.setColor(tint);
            g.fill(chip);
        }
        g.setColor(Ink.mix(Ink.text(), Ink.paper(), 0.45));
        g.draw(chip);
        g.dispose();
    }

    @Override
    public int getIconWidth() {
        return SIDE;
    }

    @Override
    public int getIconHeight() {
        return SIDE;
    }
}
