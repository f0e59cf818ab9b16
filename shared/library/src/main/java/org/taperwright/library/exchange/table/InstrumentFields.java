package org.taperwright.library.exchange.table;

import static org.taperwright.library.exchange.table.TableField.number;
import static org.taperwright.library.exchange.table.TableField.of;
import static org.taperwright.library.exchange.table.TableField.text;
import static org.taperwright.library.exchange.table.TableField.word;

import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.quantity.Unit;

/** The columns of a table of instruments, in the order written. Other headings: common practice, no source. */
final class InstrumentFields {
    static final TableField IDENTIFIER =
            of("Identifier", CellKind.TEXT, Optional.empty(), "id", Placing.kept("id"), "id", "key");
    static final TableField SIZE = of(
            "Size",
            CellKind.SIZE,
            Optional.of(Unit.NONE),
            "design.tipDiameterMm",
            Placing.kept("design.tipDiameterMm"),
            "iso size",
            "iso",
            "tip size",
            "tip diameter",
            "d0");
    static final TableField TAPER =
            of("Taper", CellKind.TAPER, Optional.of(Unit.NONE), "design.taper", DesignPlacings.taper(), "conicity");
    static final TableField DESIGN = text("Design", "designId", "design identifier");
    static final TableField ASSUMED = of(
            "Design assumed", CellKind.FLAG, Optional.empty(), "designAssumed", Placing.at("designAssumed"), "assumed");

    static final List<TableField> ALL = List.of(
            IDENTIFIER,
            of("Name", CellKind.TEXT, Optional.empty(), "name", Placing.kept("name"), "designation", "product", "item"),
            text("Maker", "maker", "manufacturer", "brand", "make"),
            text("Line", "line", "series", "system", "product line"),
            text("Type", "type", "kind", "instrument type", "file type"),
            word("Drive", FieldWords.drives(), "drive", Placing.kept("drive"), "shank", "hand or powered"),
            SIZE,
            TAPER,
            design("Length", "design.lengthMm", "total length", "file length", "l"),
            of(
                    "Working part",
                    CellKind.NUMBER,
                    Optional.of(Unit.MILLIMETRE),
                    "design.taper",
                    DesignPlacings.workingPart(),
                    "working length of the blade",
                    "cutting part",
                    "blade length"),
            word(
                    "Section",
                    FieldWords.sections(),
                    "design.sections",
                    DesignPlacings.section(),
                    "cross section",
                    "cross-section"),
            word("Alloy", FieldWords.alloys(), "design.alloy", Placing.kept("design.alloy"), "material", "metal"),
            word("Making", FieldWords.makings(), "design.making", Placing.kept("design.making"), "manufacture"),
            word("Motion", FieldWords.motions(), "design.motion", Placing.kept("design.motion"), "movement"),
            word("Tip", FieldWords.tips(), "design.tip.kind", Placing.kept("design.tip.kind"), "tip kind", "tip type"),
            range("Speed", Unit.RPM, "speedRpm", "rpm", "rotational speed"),
            number("Least speed", Unit.RPM, "speedRpm.least", "min speed", "minimum speed", "speed min", "speed from"),
            number("Most speed", Unit.RPM, "speedRpm.most", "max speed", "maximum speed", "speed max", "speed to"),
            range("Torque", Unit.NEWTON_MILLIMETRE, "torqueNmm", "torque limit"),
            number(
                    "Least torque",
                    Unit.NEWTON_MILLIMETRE,
                    "torqueNmm.least",
                    "min torque",
                    "minimum torque",
                    "torque min"),
            number(
                    "Most torque",
                    Unit.NEWTON_MILLIMETRE,
                    "torqueNmm.most",
                    "max torque",
                    "maximum torque",
                    "torque max"),
            number("Least cutting angle", Unit.DEGREE, "reciprocation.cuttingDeg.least", "cutting angle min"),
            number("Most cutting angle", Unit.DEGREE, "reciprocation.cuttingDeg.most", "cutting angle max"),
            number("Least releasing angle", Unit.DEGREE, "reciprocation.releasingDeg.least", "releasing angle min"),
            number("Most releasing angle", Unit.DEGREE, "reciprocation.releasingDeg.most", "releasing angle max"),
            number("Uses allowed", Unit.NONE, "usesAllowed", "uses", "max uses", "maximum uses", "number of uses"),
            text("Supplier", "supply.supplier", "vendor", "dealer", "distributor"),
            text("Lot", "supply.lot", "batch", "lot number", "batch number", "lot no"),
            of(
                    "Expiry",
                    CellKind.DATE,
                    Optional.empty(),
                    "supply.expiry",
                    Placing.at("supply.expiry"),
                    "expires",
                    "expiry date",
                    "expiration date",
                    "use by",
                    "best before"),
            of(
                    "Price",
                    CellKind.PRICE,
                    Optional.empty(),
                    "supply.price",
                    new PricePlacing(),
                    "unit price",
                    "price per piece",
                    "cost"),
            text("Currency", "supply.price.currency", "currency code"),
            number("Stock", Unit.NONE, "supply.stock", "in stock", "quantity", "qty", "on hand"),
            number(
                    "Reorder level",
                    Unit.NONE,
                    "supply.reorderLevel",
                    "reorder point",
                    "minimum stock",
                    "min stock",
                    "reorder at"),
            DESIGN,
            ASSUMED,
            text("Note", "note", "notes", "comment", "comments", "remark", "remarks"));

    private InstrumentFields() {}

    private static TableField design(String heading, String path, String... others) {
        return of(heading, CellKind.NUMBER, Optional.of(Unit.MILLIMETRE), path, Placing.kept(path), others);
    }

    static TableField range(String heading, Unit unit, String path, String... others) {
        return of(heading, CellKind.RANGE, Optional.of(unit), path, Placing.at(path), others);
    }
}
