package org.taperwright.catalogue.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import javax.swing.JFrame;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.design.IsoSizes;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.workbench.api.BareDesk;
import org.taperwright.workbench.ui.MemorySettings;
import org.taperwright.workbench.ui.Shots;

/**
 * How long the Instruments window takes to paint a step of scrolling through 100,000 rows; run by hand, see DEVELOPERS.md.
 * With a display the steps are those a person sees, scrolled by the scroll bar; without one every step paints all rows in
 * sight into a picture, which is more than a step needs. Prints median and 95th percentile; a frame at 60 Hz has 16.7 ms.
 */
class ScrollingMeasurement {
    private static final int ROWS = 100_000;
    private static final int WIDTH = 1400;
    private static final int HEIGHT = 900;
    private static final int WARM = 200;
    private static final int STEPS = 600;

    @Test
    void steps_by_wheel_page_and_jump() throws InterruptedException {
        Shots.theme(false);
        try (BareDesk desk = Shots.onEventThread(() -> new BareDesk(library()))) {
            InstrumentsPanel panel = Shots.onEventThread(() -> new InstrumentsPanel(desk, new MemorySettings()));
            Painter painter = GraphicsEnvironment.isHeadless() ? picture(panel) : frame(panel);
            desk.settle();
            desk.settle();
            if (GraphicsEnvironment.isHeadless()) {
                Shots.layOut(panel, WIDTH, HEIGHT); // now that there are rows
            }
            JTable table = (JTable) Panels.find(panel, "instruments.table");
            assertThat(table.getRowCount()).isEqualTo(ROWS);
            int row = table.getRowHeight();
            int page = ((Container) table.getParent()).getHeight();
            assertThat(page).as("rows are in sight").isGreaterThan(10 * row);
            measure("three rows", table, painter, step -> step * 3 * row);
            measure("a page", table, painter, step -> step * page);
            Random random = new Random(7);
            measure("a jump", table, painter, step -> random.nextInt(table.getHeight() - page));
        }
    }

    /** Paints what a scroll made dirty. */
    private interface Painter {
        void paint();
    }

    /** Where a step scrolls to, px from the top. */
    private interface Place {
        int at(int step);
    }

    private static void measure(String what, JTable table, Painter painter, Place place) {
        double[] times = new double[STEPS];
        JScrollPane scroll = (JScrollPane) SwingUtilities.getAncestorOfClass(JScrollPane.class, table);
        int lowest = table.getHeight() - scroll.getViewport().getHeight();
        for (int step = -WARM; step < STEPS; step++) {
            int at = Math.floorMod(place.at(step + WARM), lowest);
            double taken = Shots.onEventThread(() -> {
                long begin = System.nanoTime();
                scroll.getViewport().setViewPosition(new Point(0, at));
                painter.paint();
                return (System.nanoTime() - begin) / 1e6;
            });
            if (step >= 0) {
                times[step] = taken;
            }
        }
        Arrays.sort(times);
        System.out.printf(
                Locale.ROOT,
                "scrolling %,d rows by %s: median %.2f ms, 95th percentile %.2f ms, worst %.2f ms%n",
                ROWS,
                what,
                times[STEPS / 2],
                times[STEPS * 95 / 100],
                times[STEPS - 1]);
    }

    private static Painter picture(InstrumentsPanel panel) {
        Shots.onEventThread(() -> {
            panel.attach();
            return panel;
        });
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        JTable table = (JTable) Panels.find(panel, "instruments.table");
        return () -> {
            Graphics2D graphics = image.createGraphics();
            table.getParent().paint(graphics);
            graphics.dispose();
        };
    }

    private static Painter frame(InstrumentsPanel panel) {
        Shots.onEventThread(() -> {
            JFrame frame = new JFrame();
            frame.add(panel);
            frame.setSize(WIDTH, HEIGHT);
            frame.setVisible(true);
            return frame;
        });
        return () -> {
            RepaintManager.currentManager(panel).validateInvalidComponents();
            RepaintManager.currentManager(panel).paintDirtyRegions();
            panel.getToolkit().sync();
        };
    }

    private static Map<ThingId, Record> library() {
        Random random = new Random(5);
        Map<ThingId, Record> things = new HashMap<>();
        for (int i = 0; i < ROWS; i++) {
            int size = IsoSizes.sizes().get(random.nextInt(IsoSizes.sizes().size()));
            Instrument plain = SampleLibrary.hand(size);
            things.put(
                    new ThingId("i" + i),
                    plain.draft()
                            .name(plain.name() + ", " + i)
                            .supply(plain.supply().withStock(i % 7).withReorderLevel(2))
                            .instrument());
        }
        return things;
    }
}
