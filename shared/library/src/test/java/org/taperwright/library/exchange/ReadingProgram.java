package org.taperwright.library.exchange;

import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;
import org.taperwright.library.Examples;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.table.ColumnMapping;
import org.taperwright.library.exchange.table.ColumnMappings;
import org.taperwright.library.exchange.table.Known;
import org.taperwright.library.exchange.table.RowSink;
import org.taperwright.library.exchange.table.TableKind;
import org.taperwright.library.exchange.table.TableOutcome;
import org.taperwright.library.exchange.table.TablePreview;
import org.taperwright.library.exchange.table.TableReading;
import org.taperwright.library.exchange.table.TableRow;
import org.taperwright.library.exchange.text.TextSource;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Progress;

/** A program that reads one vast made-up file and prints what came of it. */
final class ReadingProgram {
    private static final String THING = JsonForms.write(new ThingId("instrument-0"), Examples.instrument());

    private ReadingProgram() {}

    public static void main(String[] arguments) {
        long bytes = Long.parseLong(arguments[1]) * 1_000_000;
        long begin = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        String outcome = switch (arguments[0]) {
            case "table" ->
                table(vast(
                        "id,name,maker,size,taper,length,lot,stock,price,currency,note\n",
                        bytes,
                        i -> "t-" + i + ",Avocet 25/.04,Marshlight," + (i % 50 == 49 ? "wide" : "25")
                                + ",.04,25,L" + i + ',' + i % 90 + ",12.50,EUR,\"A note, " + i
                                + ", that says, at some length, nothing that anybody would ever want to read\"\n"));
            case "openQuote" -> table(vast("name,size,taper\nodd,\"25,.04\n", bytes, i -> "a,25,.04\n"));
            case "longLine" -> table(vast("name,size,taper\n", bytes, i -> "no line end, "));
            case "bundle" ->
                bundle(vast(
                        "{\"form\": \"taperwright/library\", \"version\": 1, \"things\": [" + thing(-1),
                        bytes,
                        i -> "," + thing(i),
                        "]}"));
            case "longString" -> bundle(vast("{\"things\": [{\"note\": \"", bytes, i -> "no end to it "));
            case "deep" -> bundle(vast("{\"things\": [", bytes, i -> "{\"a\": ["));
            case "wide" -> bundle(vast("{\"things\": [[1", bytes, i -> ", 1"));
            default -> throw new IllegalArgumentException(arguments[0]);
        };
        double seconds = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - begin) / 1e9;
        System.out.printf(
                "%s of %s MB in %.1f s of processor time, at most %d MB in memory: %s%n",
                arguments[0], arguments[1], seconds, peak(), outcome);
    }

    private static String thing(long number) {
        return THING.replace("instrument-0", "instrument-" + (number + 1));
    }

    private static long peak() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                        .filter(pool -> pool.getType() == MemoryType.HEAP)
                        .map(MemoryPoolMXBean::getPeakUsage)
                        .mapToLong(usage -> usage.getUsed())
                        .sum()
                / 1_000_000;
    }

    private static String table(TextSource source) {
        long[] counts = new long[2];
        RowSink sink = new RowSink() {
            @Override
            public void begin(String header) {
                counts[0] = 0;
            }

            @Override
            public void row(TableRow row) {
                counts[row instanceof TableRow.Good ? 0 : 1]++;
            }
        };
        TablePreview preview = TablePreview.of(
                source, TableKind.INSTRUMENTS, Optional.empty(), ColumnMappings.NONE, Known.NOTHING, 10);
        ColumnMapping mapping = preview instanceof TablePreview.Shown shown
                ? shown.mapping()
                : ColumnMapping.guessed(TableKind.INSTRUMENTS, List.of("name", "size", "taper"));
        TableOutcome outcome =
                new TableReading(source, CsvFormat.USUAL, Known.NOTHING).read(mapping, sink, Progress.NONE);
        return outcome instanceof TableOutcome.Refused refused
                ? refused.fault().sentence()
                : counts[0] + " rows read, " + counts[1] + " not";
    }

    private static String bundle(TextSource source) {
        long[] count = new long[1];
        StreamedForms.Outcome outcome = StreamedForms.read(source, thing -> count[0]++, Progress.NONE);
        return outcome.faults().isEmpty()
                ? count[0] + " things read"
                : outcome.faults().get(0).sentence();
    }

    private static TextSource vast(String head, long bytes, LongFunction<String> part) {
        return vast(head, bytes, part, "");
    }

    private static TextSource vast(String head, long bytes, LongFunction<String> part, String tail) {
        return new TextSource() {
            @Override
            public String name() {
                return "vast";
            }

            @Override
            public long size() {
                return bytes;
            }

            @Override
            public InputStream open() {
                return new Parts(head, bytes, part, tail);
            }
        };
    }

    /** Bytes made as they are read. */
    private static final class Parts extends InputStream {
        private final long bytes;
        private final LongFunction<String> part;
        private final String tail;
        private byte[] now;
        private int at;
        private long given;
        private long number;
        private boolean ended;

        Parts(String head, long bytes, LongFunction<String> part, String tail) {
            this.bytes = bytes;
            this.part = part;
            this.tail = tail;
            this.now = head.getBytes(StandardCharsets.UTF_8);
        }

        @Override
        public int read() {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
        }

        @Override
        public int read(byte[] into, int from, int length) {
            int count = 0;
            while (count < length && more()) {
                int some = Math.min(length - count, now.length - at);
                System.arraycopy(now, at, into, from + count, some);
                at += some;
                count += some;
            }
            return count == 0 ? -1 : count;
        }

        private boolean more() {
            if (at < now.length) {
                return true;
            }
            if (ended) {
                return false;
            }
            given += now.length;
            ended = given >= bytes;
            now = (ended ? tail : part.apply(number++)).getBytes(StandardCharsets.UTF_8);
            at = 0;
            return now.length > 0;
        }
    }
}
