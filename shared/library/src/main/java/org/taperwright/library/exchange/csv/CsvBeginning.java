package org.taperwright.library.exchange.csv;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.taperwright.library.exchange.json.Place;
import org.taperwright.library.exchange.json.PlacedFault;
import org.taperwright.library.exchange.text.DecodedText;
import org.taperwright.library.exchange.text.UnreadableBytes;
import org.taperwright.mechanics.work.Fault;

/** Looks at how a table begins: in which encoding, with which delimiter and decimal sign. */
public final class CsvBeginning {
    private static final int BYTES = 1 << 16;

    private CsvBeginning() {}

    /** What the beginning shows. */
    public sealed interface Seen {}

    /** How the table is written. */
    public record Written(CsvFormat format) implements Seen {}

    /** No table that can be read; why. */
    public record Unreadable(PlacedFault fault) implements Seen {}

    /**
     * Looks at the first 64 KiB of a table.
     *
     * @param chosen the encoding, where a person chose it; otherwise it has to be UTF-8
     */
    public static Seen of(InputStream in, Optional<Charset> chosen) throws IOException {
        byte[] bytes = in.readNBytes(BYTES);
        if (starts(bytes, 0xFE, 0xFF) || starts(bytes, 0xFF, 0xFE)) {
            return unreadable("is UTF-16 text", "expected UTF-8: save it as CSV in UTF-8");
        }
        if (starts(bytes, 'P', 'K', 3, 4) || starts(bytes, 0x1F, 0x8B)) {
            return unreadable("is compressed", "expected a table as text: save it as CSV in UTF-8");
        }
        for (byte each : bytes) {
            if (each == 0) {
                return unreadable("holds binary data", "expected a table as text");
            }
        }
        Charset charset = chosen.orElse(StandardCharsets.UTF_8);
        return decoded(bytes, charset);
    }

    private static Seen decoded(byte[] bytes, Charset charset) throws IOException {
        StringBuilder text = new StringBuilder();
        int whole = bytes.length < BYTES ? BYTES : lastLineEnd(bytes);
        try (DecodedText decoded =
                new DecodedText(new ByteArrayInputStream(bytes, 0, Math.min(whole, bytes.length)), charset)) {
            char[] block = new char[BYTES];
            for (int count = decoded.read(block); count >= 0; count = decoded.read(block)) {
                text.append(block, 0, count);
            }
        } catch (UnreadableBytes foreign) {
            return unreadable(
                    "holds bytes that are not of the encoding, first byte " + foreign.position(),
                    "expected UTF-8, or another encoding to be chosen");
        }
        if (text.toString().isBlank()) {
            return unreadable("is empty", "expected a table whose first row has the headings");
        }
        return new Written(CsvGuess.of(text.toString(), charset));
    }

    /** A line end cannot fall into the bytes of one character of UTF-8, the block's end can. */
    private static int lastLineEnd(byte[] bytes) {
        for (int i = bytes.length - 1; i >= 0; i--) {
            if (bytes[i] == '\n' || bytes[i] == '\r') {
                return i + 1;
            }
        }
        int end = bytes.length;
        while (end > 0 && (bytes[end - 1] & 0xC0) == 0x80) {
            end--;
        }
        return Math.max(0, end - 1);
    }

    private static boolean starts(byte[] bytes, int... sign) {
        if (bytes.length < sign.length) {
            return false;
        }
        for (int i = 0; i < sign.length; i++) {
            if ((bytes[i] & 0xFF) != sign[i]) {
                return false;
            }
        }
        return true;
    }

    private static Seen unreadable(String what, String expected) {
        return new Unreadable(new PlacedFault(Place.START, Fault.impossible("file", what, expected)));
    }
}
