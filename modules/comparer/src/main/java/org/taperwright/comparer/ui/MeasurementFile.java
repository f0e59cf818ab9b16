package org.taperwright.comparer.ui;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.taperwright.library.exchange.bench.BenchTable;
import org.taperwright.library.exchange.bench.BenchTables;
import org.taperwright.library.exchange.csv.CsvBeginning;
import org.taperwright.library.exchange.csv.CsvFormat;

/** Reads a file of measurements in whatever delimiter it has. */
final class MeasurementFile {
    private MeasurementFile() {}

    /** What the file holds, under a name. */
    static BenchTable read(byte[] bytes, String label) throws IOException {
        CsvBeginning.Seen seen = CsvBeginning.of(new ByteArrayInputStream(bytes), Optional.empty());
        if (seen instanceof CsvBeginning.Written written) {
            CsvFormat format = written.format();
            return BenchTables.read(new String(bytes, format.charset()), format, label);
        }
        return new BenchTable.Refused(List.of(((CsvBeginning.Unreadable) seen).fault()));
    }
}
