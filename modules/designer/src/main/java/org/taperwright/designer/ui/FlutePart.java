package org.taperwright.designer.ui;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.FluteStation;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.NumberTable;
import org.taperwright.workbench.ui.QuantityKind;

/** Flutes per mm at stations along the blade. */
final class FlutePart {
    private static final QuantityKind LEVEL = QuantityKind.length(0, 40, 0.5);
    private static final QuantityKind FLUTES = QuantityKind.perMillimetre(0, 10, 0.05);
    private static final int AT = 0;

    private final OpenDesign open;
    private final NumberTable table = new NumberTable(
            "design.flutes",
            "Flutes per mm",
            List.of(
                    new NumberTable.Column("At (mm)", LEVEL, true),
                    new NumberTable.Column("Flutes per mm", FLUTES, true)));

    FlutePart(FormPane form, OpenDesign open) {
        this.open = open;
        table.onEntered(this::entered)
                .button("Add", "Add a station where the chosen one and the next meet half-way", this::add)
                .button("Remove", "Take the chosen station out", this::remove);
        table.setToolTipText("Cutting edges that cross a line parallel to the axis, per mm; linear between stations");
        form.heading("Flutes").wide(table);
        open.onShown(shown -> shown.shown().ifPresent(this::show));
    }

    private void show(Design design) {
        table.setRows(design.flutes().stream()
                .map(station -> List.of(station.levelMm(), station.flutesPerMm()))
                .toList());
    }

    private void entered(int row, int column, double value) {
        String which = "Flute station " + (row + 1);
        if (column == AT) {
            open.edit(
                    which + " to " + LEVEL.write(value),
                    design -> changed(
                            design,
                            row,
                            new FluteStation(value, design.flutes().get(row).flutesPerMm())));
        } else {
            open.edit(
                    which + " to " + FLUTES.write(value),
                    design -> changed(
                            design,
                            row,
                            new FluteStation(design.flutes().get(row).levelMm(), value)));
        }
    }

    private void add(int row) {
        open.edit("Add a flute station", design -> {
            List<FluteStation> flutes = new ArrayList<>(design.flutes());
            double level = free(design, row);
            flutes.add(new FluteStation(level, design.flutesPerMm(level)));
            return Designs.with(design).flutes(sorted(flutes)).design();
        });
    }

    /** Half-way to the next station; beyond the last one the end of the working part, if that is still free. */
    private static double free(Design design, int row) {
        List<FluteStation> flutes = design.flutes();
        double from = flutes.get(row).levelMm();
        if (row < flutes.size() - 1) {
            return (from + flutes.get(row + 1).levelMm()) / 2;
        }
        double end = design.workingPartMm();
        return end > from ? end : from / 2;
    }

    private void remove(int row) {
        open.edit(
                "Remove flute station " + (row + 1),
                design -> design.flutes().size() > 1
                        ? Designs.with(design)
                                .flutes(Rows.without(design.flutes(), row))
                                .design()
                        : design);
    }

    private static Design changed(Design design, int row, FluteStation station) {
        return Designs.with(design)
                .flutes(sorted(Rows.replaced(design.flutes(), row, station)))
                .design();
    }

    private static List<FluteStation> sorted(List<FluteStation> flutes) {
        return flutes.stream()
                .sorted(Comparator.comparingDouble(FluteStation::levelMm))
                .toList();
    }
}
