package org.taperwright.workbench.ui;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import javax.swing.JComponent;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** What a component shows, as a picture: pixels at any scale, or SVG with real text. */
public final class Picture {
    private static final String SVG = "http://www.w3.org/2000/svg";

    private Picture() {}

    /** Pixels; scale 2 gives twice as many each way. */
    public static BufferedImage image(JComponent of, double scale) {
        int width = (int) Math.ceil(of.getWidth() * scale);
        int height = (int) Math.ceil(of.getHeight() * scale);
        BufferedImage image = new BufferedImage(Math.max(1, width), Math.max(1, height), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(background(of));
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.scale(scale, scale);
        of.printAll(g);
        g.dispose();
        return image;
    }

    /** A stand-alone SVG document. */
    public static String svg(JComponent of) {
        try {
            Document document = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument(SVG, "svg", null);
            SVGGraphics2D g = new SVGGraphics2D(document);
            g.setSVGCanvasSize(new Dimension(of.getWidth(), of.getHeight()));
            g.setColor(background(of));
            g.fillRect(0, 0, of.getWidth(), of.getHeight());
            of.printAll(g);
            Element root = g.getRoot();
            root.setAttributeNS(null, "viewBox", "0 0 " + of.getWidth() + " " + of.getHeight());
            StringWriter text = new StringWriter();
            g.stream(root, text, true, false);
            return text.toString();
        } catch (ParserConfigurationException fault) {
            throw new IllegalStateException("this Java has no usual XML parser", fault);
        } catch (IOException fault) {
            throw new UncheckedIOException("writing to memory failed", fault);
        }
    }

    private static Color background(JComponent of) {
        return of.isOpaque() ? of.getBackground() : Ink.paper();
    }
}
