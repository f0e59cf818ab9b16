package org.taperwright.comparer.ui;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import javax.swing.SwingUtilities;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Shots;

/** Measures how long one picture of the map takes while it is moved over thousands of catalogue entries; run by hand. */
final class MapMotionMeasure {
    private static final int ENTRIES = 5_000;
    private static final int FRAMES = 600;

    private MapMotionMeasure() {}

    /** Prints the median and the slowest picture for both scales. */
    public static void main(String[] none) throws Exception {
        Shots.theme(false);
        for (double scale : new double[] {1, 2}) {
            SwingUtilities.invokeAndWait(() -> measure(scale));
        }
    }

    private static void measure(double scale) {
        Metric across = MapAxes.USUAL.across();
        Metric up = MapAxes.USUAL.up();
        Random random = new Random(1);
        List<Cloud.Entry> entries = new ArrayList<>();
        for (int i = 0; i < ENTRIES; i++) {
            entries.add(new Cloud.Entry(
                    new ThingId("e" + i),
                    "e" + i,
                    Map.of(across, Math.exp(0.6 * random.nextGaussian()), up, Math.exp(0.6 * random.nextGaussian()))));
        }
        List<MapPoint> points = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            double x = Math.exp(0.5 * random.nextGaussian());
            double y = Math.exp(0.5 * random.nextGaussian());
            points.add(new MapPoint(
                    new ThingId("d" + i),
                    "Design " + i,
                    new SeriesLook(i),
                    new Reading(x, Optional.of(new Band(0.9 * x, 1.1 * x))),
                    new Reading(y, Optional.of(new Band(0.8 * y, 1.2 * y))),
                    OptionalDouble.empty(),
                    i == 0,
                    Optional.empty(),
                    Optional.empty()));
        }
        TradeOffMap map = new TradeOffMap();
        map.setSize(900, 700);
        map.show(points, MapAxes.USUAL);
        map.showCloud(new Cloud(entries, 0), 1, 1);
        BufferedImage screen = new BufferedImage((int) (900 * scale), (int) (700 * scale), BufferedImage.TYPE_INT_RGB);
        ThreadMXBean thread = ManagementFactory.getThreadMXBean();
        double[] milliseconds = new double[FRAMES];
        double[] cpu = new double[FRAMES];
        for (int frame = 0; frame < FRAMES; frame++) {
            map.setView(map.view().moved(0.01 * Math.cos(frame / 40.0), 0.01 * Math.sin(frame / 40.0)));
            Graphics2D g = screen.createGraphics();
            g.scale(scale, scale);
            long from = System.nanoTime();
            long cpuFrom = thread.getCurrentThreadCpuTime();
            map.paint(g);
            milliseconds[frame] = (System.nanoTime() - from) / 1e6;
            cpu[frame] = (thread.getCurrentThreadCpuTime() - cpuFrom) / 1e6;
            g.dispose();
        }
        double[] warm = Arrays.copyOfRange(milliseconds, 100, FRAMES);
        Arrays.sort(warm);
        double[] busy = Arrays.copyOfRange(cpu, 100, FRAMES);
        Arrays.sort(busy);
        System.out.printf(
                "scale %.0f: median %.2f ms, 95 %% %.2f ms, slowest %.2f ms of %d pictures with %d entries;"
                        + " of the thread's own time median %.2f ms, 95 %% %.2f ms%n",
                scale,
                warm[warm.length / 2],
                warm[(int) (0.95 * warm.length)],
                warm[warm.length - 1],
                warm.length,
                ENTRIES,
                busy[busy.length / 2],
                busy[(int) (0.95 * busy.length)]);
    }
}
