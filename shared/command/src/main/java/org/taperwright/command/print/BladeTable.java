package org.taperwright.command.print;

import org.taperwright.command.table.Column;
import org.taperwright.command.table.Table;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.bench.spread.TwistingSpread;
import org.taperwright.mechanics.properties.ProfilePoint;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.quantity.Standing;

/** The blade along its length, about a line a millimetre. */
final class BladeTable {
    private static final double EVERY_MM = 1;
    private static final double ROUNDING_MM = 1e-6;

    private BladeTable() {}

    static Table of(Assessment assessment) {
        TwistingSpread twisting = assessment.twistingSpread();
        String computed = Standing.COMPUTED.word();
        Table table = Table.of(
                Column.numbers("level", "mm"),
                Column.numbers("diameter", "mm", computed),
                Column.numbers("area", "mm²", computed),
                Column.numbers("EI", "N·mm²", computed),
                Column.numbers("GJ", "N·mm²", computed),
                Column.numbers("plastic torque", "N·mm", Standing.ESTIMATE.word()),
                Column.words("5 to 95 %", "N·mm", ""),
                Column.numbers("core", "mm", computed),
                Column.numbers("chip space", "mm²", computed),
                Column.numbers("helix angle", "°", computed));
        double next = 0;
        for (ProfilePoint point : assessment.profile().points()) {
            if (point.levelMm() >= next - ROUNDING_MM) {
                row(point, twisting, table);
                next = (Math.floor((point.levelMm() + ROUNDING_MM) / EVERY_MM) + 1) * EVERY_MM;
            }
        }
        return table;
    }

    private static void row(ProfilePoint point, TwistingSpread twisting, Table table) {
        table.row(
                Shown.number(point.levelMm()),
                Shown.number(point.diameterMm(), 2, 2),
                Shown.number(point.areaMm2()),
                Shown.number(point.bendingStiffnessNmm2()),
                Shown.number(point.torsionalStiffnessNmm2()),
                Shown.number(point.plasticTorqueNmm()),
                twisting.likePlastic(point.plasticTorqueNmm())
                        .band()
                        .map(Shown::band)
                        .orElse(""),
                Shown.number(point.coreMm()),
                Shown.number(point.chipSpaceMm2()),
                Shown.number(point.helixAngleDeg(), 1, 1));
    }
}
