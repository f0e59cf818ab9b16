package org.taperwright.library.exchange.text;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.Writer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/**
 * A text file in UTF-8 on its way: it grows beside its place under another name, and is put there in one step when all of it
 * is on the disk. So what stands in the place is at every moment either as it was or whole.
 */
public final class WholeFile implements AutoCloseable {
    private final Path place;
    private final Path part;
    private final FileChannel channel;
    private final Writer out;
    private boolean written;

    /** Writes a text. */
    @FunctionalInterface
    public interface Writing {
        /** Writes it all; the writer stays open. */
        void to(Writer out) throws IOException;
    }

    private WholeFile(Path place, Path part) throws IOException {
        this.place = place;
        this.part = part;
        this.channel = FileChannel.open(part, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW);
        this.out = new BufferedWriter(Channels.newWriter(channel, StandardCharsets.UTF_8));
    }

    /** Begins a file; nothing stands in its place yet that did not before. */
    public static WholeFile begin(Path place) throws IOException {
        return new WholeFile(place, place.resolveSibling(place.getFileName() + "." + UUID.randomUUID() + ".part"));
    }

    /** Writes a file whole; when that fails, what stood in its place stays. */
    public static void write(Path place, Writing writing) throws IOException {
        try (WholeFile file = begin(place)) {
            writing.to(file.out());
            file.put();
        }
    }

    /** Takes the text. */
    public Writer out() {
        return out;
    }

    /** Brings all of the text to the disk; after this only putting it in its place is left. */
    public void settle() throws IOException {
        if (!written) {
            out.flush();
            channel.force(true);
            out.close();
            written = true;
        }
    }

    /** Puts the file in its place, instead of one that stands there. */
    public void put() throws IOException {
        settle();
        Files.move(part, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Where the text lies until it is put in its place. */
    public Path part() {
        return part;
    }

    /** Takes away what was not put in its place. */
    @Override
    public void close() throws IOException {
        try {
            channel.close();
        } finally {
            Files.deleteIfExists(part);
        }
    }
}
