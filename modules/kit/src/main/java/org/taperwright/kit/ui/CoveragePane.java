package org.taperwright.kit.ui;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import org.taperwright.mechanics.design.IsoSizes;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.shaping.kit.Coverage;
import org.taperwright.shaping.kit.Coverages.Extent;

/**
 * Which sizes, tapers and lengths the kit has and which the saved sequences miss, as a grid and sequence by sequence. The
 * grid says each in words: what is there with its number, what is missing as "missing".
 */
final class CoveragePane extends JPanel {
    private final JPanel gridPlace = new JPanel(new BorderLayout());
    private final ListPane sequences = new ListPane(
            "kit.coverage",
            "Sequences the kit can serve",
            List.of("Sequence", "Steps", "Missing"),
            List.of(240, 90, 600));
    private transient List<Double> tapers = List.of();
    private transient ListPane grid = grid(List.of());

    CoveragePane() {
        super(new BorderLayout());
        JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, gridPlace, sequences);
        split.setResizeWeight(0.55);
        split.setBorder(javax.swing.BorderFactory.createEmptyBorder());
        gridPlace.add(grid);
        add(split);
    }

    private static ListPane grid(List<Double> tapers) {
        List<String> headers = new ArrayList<>(List.of("Size"));
        List<Integer> widths = new ArrayList<>(List.of(60));
        for (double taper : tapers) {
            headers.add("Taper " + Shown.taper(taper));
            widths.add(180);
        }
        return new ListPane("kit.grid", "Sizes, tapers and lengths", headers, widths);
    }

    void show(KitReading reading) {
        Map<Integer, Map<Double, TreeSet<Extent>>> cells = new TreeMap<>();
        reading.extents().keySet().forEach(extent -> put(cells, extent));
        reading.wanted().keySet().forEach(extent -> put(cells, extent));
        List<Double> now = cells.values().stream()
                .flatMap(row -> row.keySet().stream())
                .distinct()
                .sorted()
                .toList();
        if (!now.equals(tapers)) {
            tapers = now;
            grid = grid(now);
            gridPlace.removeAll();
            gridPlace.add(grid);
            gridPlace.revalidate();
        }
        List<List<String>> rows = new ArrayList<>();
        cells.forEach((size, row) -> {
            List<String> line = new ArrayList<>(List.of(IsoSizes.text(size)));
            now.forEach(taper -> line.add(row.getOrDefault(taper, new TreeSet<>()).stream()
                    .map(extent -> words(extent, reading))
                    .collect(Collectors.joining(", "))));
            rows.add(line);
        });
        grid.show(
                "Lengths the kit has, with their number, and lengths that a saved sequence asks for and the kit has not.",
                rows);
        sequences.show(
                "A step takes a piece of its own entry, or one alike in size, taper and drive that is long enough.",
                reading.card().coverage().stream().map(CoveragePane::row).toList());
    }

    private static void put(Map<Integer, Map<Double, TreeSet<Extent>>> cells, Extent extent) {
        cells.computeIfAbsent(extent.size(), each -> new TreeMap<>())
                .computeIfAbsent(extent.taper(), each -> new TreeSet<>())
                .add(extent);
    }

    private static String words(Extent extent, KitReading reading) {
        Integer there = reading.extents().get(extent);
        return there == null ? Shown.mm(extent.lengthMm()) + " missing" : Shown.mm(extent.lengthMm()) + " × " + there;
    }

    private static List<String> row(Coverage coverage) {
        long found = coverage.steps().stream()
                .filter(step -> !step.pieces().isEmpty())
                .count();
        return List.of(
                coverage.name(),
                found + " of " + coverage.steps().size(),
                coverage.complete() ? "nothing" : String.join("; ", coverage.missing()));
    }
}
