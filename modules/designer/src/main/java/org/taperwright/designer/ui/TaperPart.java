package org.taperwright.designer.ui;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.NumberTable;
import org.taperwright.workbench.ui.QuantityKind;

/** Taper segments as a profile to drag and as numbers. */
final class TaperPart {
    private static final double FARTHEST = 40;
    private static final double ADDED = 2;
    private static final int TO = 1;
    private static final QuantityKind LEVEL = QuantityKind.length(0, FARTHEST, 0.5);
    private static final QuantityKind TAPER = QuantityKind.taper();

    private final OpenDesign open;
    private final TaperProfile profile;
    private final NumberTable table = new NumberTable(
            "design.taper",
            "Taper segments",
            List.of(
                    new NumberTable.Column("From (mm)", LEVEL, false),
                    new NumberTable.Column("To (mm)", LEVEL, true),
                    new NumberTable.Column("Taper (mm/mm)", TAPER, true),
                    new NumberTable.Column("Diameter (mm)", QuantityKind.diameter(0, 5, 0.01), false)));

    TaperPart(FormPane form, OpenDesign open) {
        this.open = open;
        profile = new TaperProfile(open);
        table.onEntered(this::entered)
                .button("Split", "Cut the chosen segment in two of the same taper", this::split)
                .button("Remove", "Take the chosen segment out; its neighbour reaches over its place", this::remove)
                .button("Add at end", "Lengthen the working part by a further segment of 2 mm", row -> add());
        form.heading("Taper").wide(profile).wide(table);
        open.onShown(shown -> shown.shown().ifPresent(this::show));
    }

    private void show(Design design) {
        List<List<Double>> rows = new ArrayList<>();
        double diameter = design.tipDiameterMm();
        for (TaperSegment segment : design.taper()) {
            diameter += segment.taper() * (segment.toMm() - segment.fromMm());
            rows.add(List.of(segment.fromMm(), segment.toMm(), segment.taper(), diameter));
        }
        table.setRows(rows);
    }

    private void entered(int row, int column, double value) {
        if (column == TO) {
            open.edit(
                    endName(row, value),
                    design -> Designs.with(design)
                            .taper(Tapers.withEnd(design.taper(), row, value, FARTHEST))
                            .design());
        } else {
            open.edit(
                    taperName(row, value),
                    design -> Designs.with(design)
                            .taper(Tapers.withTaper(design.taper(), row, value))
                            .design());
        }
    }

    static String taperName(int row, double value) {
        return "Taper segment " + (row + 1) + " to " + TAPER.number(value);
    }

    static String endName(int row, double value) {
        return "Taper segment " + (row + 1) + " ending at " + LEVEL.write(value);
    }

    private void split(int row) {
        open.edit(
                "Split taper segment " + (row + 1),
                design -> Tapers.canSplit(design.taper().get(row))
                        ? Designs.with(design)
                                .taper(Tapers.split(design.taper(), row))
                                .design()
                        : design);
    }

    private void remove(int row) {
        open.edit(
                "Remove taper segment " + (row + 1),
                design -> design.taper().size() > 1
                        ? Designs.with(design)
                                .taper(Tapers.without(design.taper(), row))
                                .design()
                        : design);
    }

    private void add() {
        open.edit(
                "Add a taper segment",
                design -> Designs.with(design)
                        .taper(Tapers.extended(design.taper(), ADDED))
                        .design());
    }
}
