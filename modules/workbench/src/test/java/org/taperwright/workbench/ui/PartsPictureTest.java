package org.taperwright.workbench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.FlowLayout;
import java.awt.GridLayout;
import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.table.DefaultTableModel;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.section.FamilyParameter;
import org.taperwright.mechanics.work.Fault;

/** All parts on one sheet, in both themes and two scales, kept for looking at. */
class PartsPictureTest {
    @ParameterizedTest
    @CsvSource({"false, 1", "false, 2", "true, 1", "true, 2"})
    void all_parts_draw_in_light_and_dark_at_both_scales(boolean dark, double scale) {
        Shots.theme(dark);
        JPanel sheet = Shots.onEventThread(PartsPictureTest::sheet);
        String name = "parts-" + (dark ? "dark" : "light") + "-" + (int) scale;

        BufferedImage picture = Shots.take(name, sheet, 1000, 760, scale);

        Color paper = new Color(picture.getRGB(2, 2));
        assertThat(paper.getRed() < 128).isEqualTo(dark);
        Set<Integer> colours = new HashSet<>();
        for (int x = 0; x < picture.getWidth(); x += 3) {
            for (int y = 0; y < picture.getHeight(); y += 3) {
                colours.add(picture.getRGB(x, y));
            }
        }
        IntStream.range(0, SeriesLook.DISTINCT)
                .forEach(place -> assertThat(colours)
                        .contains(new SeriesLook(place).colour().getRGB()));
    }

    private static JPanel sheet() {
        JPanel sheet = new JPanel(new GridLayout(0, 2, Spacing.APART, Spacing.APART));
        sheet.setBorder(Spacing.around(Spacing.APART));
        sheet.add(form());
        sheet.add(plot());
        sheet.add(table());
        sheet.add(remarks());
        return sheet;
    }

    private static JPanel form() {
        QuantityField wrong = new QuantityField("size", "Tip diameter", QuantityKind.diameter(0.06, 1.4, 0.01));
        wrong.setValue(0.25);
        ((javax.swing.JTextField) wrong.entry()).setText("0.25 inch");
        wrong.enter();
        QuantityField right = new QuantityField("taper", "Taper", QuantityKind.taper());
        right.setValue(0.06);
        ParameterForm parameters = new ParameterForm("parameters");
        parameters.setParameters(
                List.of(
                        new FamilyParameter("sagitta", "Sagitta", "d", -0.2, 0.2, 0, 0.01, false, "Bow of the sides."),
                        new FamilyParameter("flutes", "Flutes", "", 1, 4, 3, 1, true, "How many flutes.")),
                Map.of("sagitta", 0.03));
        return new FormPane("form")
                .heading("Blade")
                .row("Tip diameter", wrong, "Projected diameter at the tip")
                .row("Taper", right, "mm per mm")
                .row("Tip", new ChoiceField<>("tip", "Tip", List.of("active", "passive"), word -> word), "")
                .heading("Section")
                .wide(parameters);
    }

    private static JPanel plot() {
        List<Plot.Curve> curves = IntStream.range(0, SeriesLook.DISTINCT)
                .mapToObj(place -> new Plot.Curve(
                        "Design " + (place + 1),
                        new SeriesLook(place),
                        place == 3 ? Plot.Style.LINE_AND_SPOTS : Plot.Style.LINE,
                        IntStream.rangeClosed(0, 16)
                                .mapToObj(x -> new Plot.Spot(x, 0.25 + (0.02 + place * 0.006) * x))
                                .toList()))
                .toList();
        Plot.Curve mid = curves.get(2);
        Plot.Band band = new Plot.Band(
                "Design 3",
                mid.look(),
                mid.spots().stream()
                        .map(spot -> new Plot.Spot(spot.x(), spot.y() * 0.9))
                        .toList(),
                mid.spots().stream()
                        .map(spot -> new Plot.Spot(spot.x(), spot.y() * 1.1))
                        .toList());
        XyPlot plot = new XyPlot("plot", "Diameter along the blade");
        plot.setPlot(new Plot(
                Plot.Axis.of("Distance from the tip", "mm"),
                Plot.Axis.of("Diameter", "mm"),
                curves,
                List.of(band),
                List.of(
                        new Plot.Rule("Shaft 0.80 mm", Plot.Run.ACROSS, 0.8),
                        new Plot.Rule("Level", Plot.Run.UPRIGHT, 3))));
        JPanel holder = new JPanel(new BorderLayout());
        holder.add(new Heading("Diameter along the blade"), BorderLayout.NORTH);
        holder.add(plot);
        return holder;
    }

    private static JPanel table() {
        JTable table = new JTable(new DefaultTableModel(
                new Object[][] {{"25", 0.25}, {"30", 12.5}, {"35", 104.0}, {"40", ""}},
                new Object[] {"Size", "Moment (N\u00b7mm)"}));
        table.getColumnModel()
                .getColumn(1)
                .setCellRenderer(new NumberCells(value -> String.format(Locale.ROOT, "%.3s", value), 2));
        JPanel holder = new JPanel(new BorderLayout(0, Spacing.NEAR));
        holder.add(new JScrollPane(table));
        JPanel chips = new JPanel(new FlowLayout(FlowLayout.LEADING, Spacing.NEAR, 0));
        String[][] sizes = {
            {"pink", "06"},
            {"grey", "08"},
            {"purple", "10"},
            {"white", "15"},
            {"yellow", "20"},
            {"red", "25"},
            {"blue", "30"},
            {"green", "35"},
            {"black", "40"}
        };
        for (String[] size : sizes) {
            chips.add(SizeChip.label(size[0], size[1]));
        }
        chips.add(new StandingMark(Standing.ESTIMATE));
        holder.add(chips, BorderLayout.SOUTH);
        return holder;
    }

    private static JPanel remarks() {
        FaultList faults = new FaultList("faults", "Nothing to remark.", where -> "Taper segment 2");
        faults.setFaults(List.of(
                Fault.unusual(
                        "making",
                        "a superelastic blank that is twisted",
                        "superelastic blanks are ground, because they spring back when twisted"),
                Fault.impossible(
                        "taper[1].taper",
                        "the diameter falls to 0.03 mm at 14 mm",
                        "a diameter above 0.05 mm everywhere")));
        JPanel holder = new JPanel(new BorderLayout(0, Spacing.NEAR));
        holder.add(faults, BorderLayout.NORTH);
        holder.add(new EmptyState(
                "empty", "No design chosen", "Choose a design in the library, or make a new one.", List.of()));
        holder.add(new CautionLine(), BorderLayout.SOUTH);
        return holder;
    }
}
