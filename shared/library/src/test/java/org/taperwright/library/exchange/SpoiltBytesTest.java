package org.taperwright.library.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.taperwright.library.Examples;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.csv.CsvLimits;
import org.taperwright.library.exchange.table.ColumnMappings;
import org.taperwright.library.exchange.table.Known;
import org.taperwright.library.exchange.table.RowSink;
import org.taperwright.library.exchange.table.TableKind;
import org.taperwright.library.exchange.table.TableOutcome;
import org.taperwright.library.exchange.table.TablePreview;
import org.taperwright.library.exchange.table.TableReading;
import org.taperwright.library.exchange.table.TableRow;
import org.taperwright.library.exchange.text.TextSource;
import org.taperwright.mechanics.work.Progress;

/**
 * Whatever bytes a file holds, reading it ends in things and in faults with their place. Files are good ones spoilt at
 * random: bytes cut out, put in, changed, doubled. The profile {@code spoilt} tries far more.
 */
class SpoiltBytesTest {
    private static final int TRIES = Integer.getInteger("spoilt", 1500);
    private static final String[] SCRAPS = {
        "\"",
        ",",
        ";",
        "\t",
        "\n",
        "\r",
        "\r\n",
        "\"\"",
        "'=",
        "=1+1",
        "{",
        "}",
        "[",
        "]",
        ":",
        "null",
        "NaN",
        "1e999",
        "-",
        "\\u",
        "\0",
        "\uFEFF",
        "ä",
        "中",
        "9".repeat(300),
        "x".repeat(300),
        "\n\n",
        ",,,,",
        "25/.04",
        "0,5"
    };
    private static final String TABLE = "id;name;maker;size;taper;length;torque (N·cm);expiry;price (EUR);stock;note\n"
            + "a-1;Avocet;Marshlight;25;0,04;25;1,5-2;2027-01-31;12,50;7;\"a \"\"note\"\"; of\ntwo lines\"\n"
            + "a-2;Avocet;\"Marsh;light\";30;.06;21;2;31.12.2028;9 EUR;0;'=1+1\n"
            + "a-3;Höhe;;08;4 %;31;;;;;\n";

    private final long seed = System.nanoTime();
    private final Random random = new Random(seed);

    @Test
    void aSpoiltTableEndsInRowsAndFaultsWithTheirPlace() {
        byte[] good = TABLE.getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < TRIES; i++) {
            byte[] bytes = spoilt(good);
            Seen seen = new Seen("try " + i + " of seed " + seed);
            TextSource source = Bytes.source("t", bytes);
            CsvLimits limits = random.nextBoolean() ? CsvLimits.USUAL : new CsvLimits(200, 50, 12, 4);
            TablePreview preview = TablePreview.of(
                    source, TableKind.INSTRUMENTS, Optional.empty(), ColumnMappings.NONE, Known.NOTHING, 2);
            if (preview instanceof TablePreview.Shown shown) {
                CsvFormat format = shown.format();
                TableOutcome outcome = new TableReading(source, format, Known.NOTHING, limits)
                        .read(shown.mapping(), seen, Progress.NONE);
                assertThat(outcome.good()).as(seen.when).isEqualTo(seen.good);
                if (outcome instanceof TableOutcome.Refused refused) {
                    seen.check(refused.fault());
                }
            } else {
                seen.check(((TablePreview.Refused) preview).fault());
            }
        }
    }

    @Test
    void aSpoiltBundleEndsInThingsOrInFaultsWithTheirPlace() {
        List<byte[]> good = Stream.concat(
                        Stream.of(JsonForms.write(Examples.bundle())),
                        Examples.bundle().items().stream().map(item -> JsonForms.write(item.id(), item.thing())))
                .map(text -> text.getBytes(StandardCharsets.UTF_8))
                .toList();
        for (int i = 0; i < TRIES; i++) {
            byte[] bytes = spoilt(good.get(random.nextInt(good.size())));
            Seen seen = new Seen("try " + i + " of seed " + seed);
            StreamedForms.Outcome outcome =
                    StreamedForms.read(Bytes.source("t", bytes), thing -> seen.good++, Progress.NONE);
            outcome.faults().forEach(seen::check);
            outcome.remarks().forEach(seen::check);
            assertThat(outcome.faults().isEmpty() && seen.good == 0 && bytes.length == 0)
                    .as(seen.when)
                    .isFalse();
        }
    }

    private byte[] spoilt(byte[] good) {
        byte[] bytes = good;
        for (int changes = 1 + random.nextInt(3); changes > 0; changes--) {
            int from = random.nextInt(bytes.length + 1);
            int to = Math.min(bytes.length, from + (random.nextInt(4) == 0 ? random.nextInt(80) : random.nextInt(3)));
            byte[] scrap = switch (random.nextInt(4)) {
                case 0 -> SCRAPS[random.nextInt(SCRAPS.length)].getBytes(StandardCharsets.UTF_8);
                case 1 -> randomBytes(random.nextInt(4));
                case 2 -> Arrays.copyOfRange(bytes, from, Math.min(bytes.length, from + random.nextInt(60)));
                default -> new byte[0];
            };
            bytes = joined(Arrays.copyOfRange(bytes, 0, from), scrap, Arrays.copyOfRange(bytes, to, bytes.length));
        }
        return bytes;
    }

    private byte[] randomBytes(int count) {
        byte[] bytes = new byte[count];
        random.nextBytes(bytes);
        return bytes;
    }

    private static byte[] joined(byte[]... parts) {
        int length = Arrays.stream(parts).mapToInt(part -> part.length).sum();
        byte[] all = new byte[length];
        int at = 0;
        for (byte[] part : parts) {
            System.arraycopy(part, 0, all, at, part.length);
            at += part.length;
        }
        return all;
    }

    /** What was seen of one file. */
    private static final class Seen implements RowSink {
        private final String when;
        private long good;

        Seen(String when) {
            this.when = when;
        }

        void check(FileFault fault) {
            assertThat(fault.line()).as(when).isPositive();
            assertThat(fault.column()).as(when).isPositive();
            assertThat(fault.sentence()).as(when).doesNotContain("Exception").doesNotContain("Source:");
            assertThat(fault.fault().expected()).as(when).isNotBlank();
        }

        @Override
        public void begin(String header) {
            assertThat(header).as(when).isNotEmpty();
        }

        @Override
        public void row(TableRow row) {
            if (row instanceof TableRow.Bad bad) {
                assertThat(bad.faults()).as(when).isNotEmpty();
                bad.faults().forEach(this::check);
            } else {
                good++;
                assertThat(JsonForms.faults(((TableRow.Good) row).id(), ((TableRow.Good) row).thing()))
                        .as(when)
                        .isEmpty();
            }
        }
    }
}
