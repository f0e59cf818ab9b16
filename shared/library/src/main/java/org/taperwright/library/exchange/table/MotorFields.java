package org.taperwright.library.exchange.table;

import static org.taperwright.library.exchange.table.InstrumentFields.range;
import static org.taperwright.library.exchange.table.TableField.number;
import static org.taperwright.library.exchange.table.TableField.of;
import static org.taperwright.library.exchange.table.TableField.text;

import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.quantity.Unit;

/** The columns of a table of motors, in the order written. Other headings: common practice, no source. */
final class MotorFields {
    static final List<TableField> ALL = List.of(
            InstrumentFields.IDENTIFIER,
            text("Name", "name", "motor", "model", "product", "item"),
            text("Maker", "maker", "manufacturer", "brand", "make"),
            range("Speed", Unit.RPM, "speedRpm", "rpm", "speed range"),
            number("Least speed", Unit.RPM, "speedRpm.least", "min speed", "minimum speed", "speed min"),
            number("Most speed", Unit.RPM, "speedRpm.most", "max speed", "maximum speed", "speed max"),
            range("Torque", Unit.NEWTON_MILLIMETRE, "torqueNmm", "torque range"),
            number("Least torque", Unit.NEWTON_MILLIMETRE, "torqueNmm.least", "min torque", "torque min"),
            number("Most torque", Unit.NEWTON_MILLIMETRE, "torqueNmm.most", "max torque", "torque max"),
            number("Least cutting angle", Unit.DEGREE, "reciprocation.cuttingDeg.least", "cutting angle min"),
            number("Most cutting angle", Unit.DEGREE, "reciprocation.cuttingDeg.most", "cutting angle max"),
            number("Least releasing angle", Unit.DEGREE, "reciprocation.releasingDeg.least", "releasing angle min"),
            number("Most releasing angle", Unit.DEGREE, "reciprocation.releasingDeg.most", "releasing angle max"),
            of("Cordless", CellKind.FLAG, Optional.empty(), "cordless", Placing.at("cordless"), "battery"),
            of("Apex locator", CellKind.FLAG, Optional.empty(), "apexLocator", Placing.at("apexLocator"), "locator"),
            text("Note", "note", "notes", "comment", "comments", "remark", "remarks"));

    private MotorFields() {}
}
