package org.taperwright.library.exchange.table;

import java.util.List;
import java.util.Optional;
import org.taperwright.library.store.ThingKind;

/** The kinds of thing that have a table. */
public enum TableKind {
    INSTRUMENTS(ThingKind.INSTRUMENT, InstrumentFields.ALL),
    MOTORS(ThingKind.MOTOR, MotorFields.ALL);

    private final ThingKind thing;
    private final List<TableField> fields;

    TableKind(ThingKind thing, List<TableField> fields) {
        this.thing = thing;
        this.fields = fields;
    }

    /** The kind of thing in its rows. */
    public ThingKind thing() {
        return thing;
    }

    /** The names of the fields that a column can be mapped to, in order. */
    public List<String> fieldNames() {
        return fields.stream().map(TableField::heading).toList();
    }

    List<TableField> fields() {
        return fields;
    }

    Optional<TableField> field(String name) {
        return fields.stream().filter(field -> field.heading().equals(name)).findFirst();
    }
}
