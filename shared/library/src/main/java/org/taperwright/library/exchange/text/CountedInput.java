package org.taperwright.library.exchange.text;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import org.taperwright.mechanics.work.Progress;

/** Counts the bytes read, to tell how far the reading is. */
public final class CountedInput extends FilterInputStream {
    private long count;

    /** Counts what is read of a stream. */
    public CountedInput(InputStream in) {
        super(in);
    }

    @Override
    public int read() throws IOException {
        int one = super.read();
        count += one < 0 ? 0 : 1;
        return one;
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
        int read = super.read(into, from, length);
        count += Math.max(0, read);
        return read;
    }

    /**
     * Tells how far it is, after asking whether to go on.
     *
     * @throws org.taperwright.mechanics.work.WorkCancelled if not
     */
    public void report(TextSource source, Progress progress) {
        progress.check();
        progress.at(source.size() > 0 ? Math.min(1, (double) count / source.size()) : 0, "Reading " + source.name());
    }
}
