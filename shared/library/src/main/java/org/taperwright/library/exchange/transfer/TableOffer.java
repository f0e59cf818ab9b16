package org.taperwright.library.exchange.transfer;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.library.exchange.LibraryBundle;
import org.taperwright.library.exchange.table.ColumnMapping;
import org.taperwright.library.exchange.table.RowSink;
import org.taperwright.library.exchange.table.TableOutcome;
import org.taperwright.library.exchange.table.TableReading;
import org.taperwright.library.exchange.table.TableRow;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;

/**
 * The things of a table; its rows with faults go elsewhere.
 *
 * @param reading the table
 * @param mapping which column means which field
 * @param bad takes the headings and the rows with faults
 */
public record TableOffer(TableReading reading, ColumnMapping mapping, RowSink bad) implements Offer {
    /** Passes over the rows with faults. */
    public static final RowSink NOWHERE = new RowSink() {
        @Override
        public void begin(String header) {
            // nobody reads them
        }

        @Override
        public void row(TableRow row) {
            // nobody reads them
        }
    };

    @Override
    public String name() {
        return reading.source().name();
    }

    @Override
    public long size() {
        return reading.source().size();
    }

    @Override
    public Given each(Consumer<LibraryBundle.Item> taker, Progress progress) {
        Once once = new Once(taker);
        TableOutcome outcome = reading.read(mapping, once, progress);
        return new Given(
                outcome instanceof TableOutcome.Refused refused ? List.of(refused.fault()) : List.of(),
                List.of(),
                outcome.bad() + once.twice);
    }

    /** Takes each thing once: a later row of the same thing is a fault. */
    private final class Once implements RowSink {
        private final Consumer<LibraryBundle.Item> taker;
        private final Map<ThingId, Integer> lines = new HashMap<>();
        private long twice;

        Once(Consumer<LibraryBundle.Item> taker) {
            this.taker = taker;
        }

        @Override
        public void begin(String header) {
            bad.begin(header);
        }

        @Override
        public void row(TableRow row) {
            if (!(row instanceof TableRow.Good good)) {
                bad.row(row);
                return;
            }
            Integer before = lines.putIfAbsent(good.id(), good.line());
            if (before == null) {
                taker.accept(new LibraryBundle.Item(good.id(), good.thing()));
                return;
            }
            twice++;
            Fault fault = Fault.impossible(
                    "row", "is the same " + mapping.kind().thing().word() + " as line " + before, "expected each once");
            bad.row(new TableRow.Bad(
                    good.line(), good.verbatim(), List.of(new FileFault(name(), good.line(), 1, fault))));
        }
    }
}
