package org.taperwright.library.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.taperwright.library.exchange.json.Limits;
import org.taperwright.library.exchange.json.Place;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.work.Fault;

/** Forms as files in UTF-8. */
public final class FormFiles {
    private FormFiles() {}

    /** Reads a file; whatever is wrong with it, its absence included, is a fault. */
    public static ReadResult read(Path file) {
        return read(file, EnumSet.allOf(ThingKind.class));
    }

    /** As {@link #read(Path)}, refusing things of other kinds than those expected. */
    public static ReadResult read(Path file, Set<ThingKind> expected) {
        String source = file.toString();
        if (Files.isDirectory(file)) {
            return refused(source, "is a folder", "expected a file with a JSON form");
        }
        try (InputStream in = Files.newInputStream(file)) {
            // never more than one byte beyond the limit, so that no file fills the memory
            byte[] bytes = in.readNBytes(Limits.USUAL.characters() + 1);
            if (bytes.length > Limits.USUAL.characters()) {
                return refused(
                        source,
                        "is larger than " + Limits.USUAL.characters() / 1_000_000 + " MB",
                        "expected a smaller one: split it");
            }
            return JsonForms.read(decoded(bytes), source, expected);
        } catch (CharacterCodingException unreadable) {
            return refused(source, "is not UTF-8 text", "expected a JSON form in UTF-8");
        } catch (NoSuchFileException absent) {
            return refused(source, "does not exist", "expected a file with a JSON form");
        } catch (IOException unreadable) {
            return refused(source, "cannot be read (" + unreadable.getMessage() + ")", "expected a readable file");
        }
    }

    private static String decoded(byte[] bytes) throws CharacterCodingException {
        return StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(ByteBuffer.wrap(bytes))
                .toString();
    }

    private static ReadResult refused(String source, String what, String expected) {
        return new ReadResult.Refused(
                List.of(FileFault.at(source, Place.START, Fault.impossible("file", what, expected))));
    }
}
