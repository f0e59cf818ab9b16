package org.taperwright.command.print;

import org.taperwright.command.table.Column;
import org.taperwright.command.table.Table;
import org.taperwright.mechanics.assessment.AssessedSection;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.properties.SectionProperties;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.section.Edge;

/** Tables of a design's sections by station, in units of the diameter. */
final class SectionTables {
    private static final String COMPUTED = Standing.COMPUTED.word();

    private SectionTables() {}

    static Table properties(Assessment assessment) {
        Table table = Table.of(
                Column.numbers("level", "mm"),
                Column.words("section", ""),
                computed("area", "d²"),
                computed("I greatest", "d⁴"),
                computed("I least", "d⁴"),
                computed("J", "d⁴"),
                computed("peak shear", "T/d³"),
                computed("plastic torque", "k d³"),
                computed("core", "d"),
                computed("chip space", "d²"));
        for (int i = 0; i < assessment.stations().size(); i++) {
            SectionProperties p = assessment.stations().get(i).properties();
            String family = assessment.design().sections().get(i).shape().family();
            table.row(
                    Shown.number(assessment.stations().get(i).levelMm()),
                    SectionWords.of(family),
                    Shown.number(p.area()),
                    Shown.number(p.iMax()),
                    Shown.number(p.iMin()),
                    Shown.number(p.torsionConstant()),
                    Shown.number(p.peakShear()) + (p.peakShearSingular() ? " *" : ""),
                    Shown.number(p.plasticTorque()),
                    Shown.number(p.core()),
                    Shown.number(p.chipSpace()));
        }
        return table;
    }

    static boolean singular(Assessment assessment) {
        return assessment.stations().stream()
                .anyMatch(station -> station.properties().peakShearSingular());
    }

    static Table edges(Assessment assessment) {
        Table table = Table.of(
                Column.numbers("level", "mm"),
                Column.numbers("edge"),
                computed("rake", "°"),
                computed("wedge", "°"),
                computed("clearance", "°"),
                computed("land", "d"));
        for (AssessedSection station : assessment.stations()) {
            int number = 1;
            for (Edge edge : station.edges()) {
                table.row(
                        Shown.number(station.levelMm()),
                        String.valueOf(number++),
                        Shown.number(edge.rakeDeg(), 1, 1),
                        Shown.number(edge.wedgeDeg(), 1, 1),
                        Shown.number(edge.clearanceDeg(), 1, 1),
                        Shown.number(edge.landWidth()));
            }
            if (station.edges().isEmpty()) {
                table.row(Shown.number(station.levelMm()), "none", "", "", "", "");
            }
        }
        return table;
    }

    private static Column computed(String name, String unit) {
        return Column.numbers(name, unit, COMPUTED);
    }
}
