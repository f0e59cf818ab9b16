package org.taperwright.command.input;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.library.exchange.course.CanalTable;
import org.taperwright.library.exchange.course.CanalTables;
import org.taperwright.library.exchange.csv.CsvBeginning;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.json.PlacedFault;
import org.taperwright.shaping.canal.Canal;

/** Canals given as tables of points. */
public final class CanalPoints {
    private static final int MOST_BYTES = 4_000_000;
    /** How far an orifice lies from the reference point where nothing says it, mm: common practice, no source. */
    private static final double USUAL_ORIFICE_MM = 8;

    private static final double SHORT_OF_END_MM = 0.5;

    private CanalPoints() {}

    /** Whether words name a table rather than a form or a thing. */
    public static boolean names(String words) {
        return words.toLowerCase(Locale.ROOT).endsWith(".csv");
    }

    /**
     * The canal of a table; {@link BadInput} says what is wrong with it, with line and column.
     *
     * @param orificeMm distance from the reference point to the orifice, mm, where given
     * @param own the canal whose working length it shall have otherwise
     */
    public static Canal read(Path file, Optional<Double> orificeMm, Optional<Canal> own) {
        DoubleUnaryOperator reference = length -> orificeMm.orElseGet(() -> own.map(
                        tried -> Math.max(0, tried.workingLengthMm() - length + SHORT_OF_END_MM))
                .orElse(USUAL_ORIFICE_MM));
        CanalTable table = table(file, reference);
        if (table instanceof CanalTable.Read read) {
            return read.canal();
        }
        throw BadInput.in(((CanalTable.Refused) table)
                .faults().stream()
                        .map(fault -> FileFault.of(file.toString(), fault))
                        .toList());
    }

    private static CanalTable table(Path file, DoubleUnaryOperator referenceMm) {
        try (var in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw BadInput.of(file + ": is larger than 4 MB", "expected a canal's points");
            }
            CsvBeginning.Seen seen = CsvBeginning.of(new ByteArrayInputStream(bytes), Optional.empty());
            if (seen instanceof CsvBeginning.Unreadable unreadable) {
                return new CanalTable.Refused(List.<PlacedFault>of(unreadable.fault()));
            }
            CsvFormat format = ((CsvBeginning.Written) seen).format();
            String name = file.getFileName().toString().replaceAll("(?i)\\.csv$", "");
            return CanalTables.read(new String(bytes, format.charset()), format, name, referenceMm);
        } catch (NoSuchFileException absent) {
            throw BadInput.of(file + ": does not exist", "expected a table of a canal's points");
        } catch (IOException unreadable) {
            throw BadInput.of(file + ": cannot be read (" + unreadable.getMessage() + ")", "expected a readable file");
        }
    }
}
