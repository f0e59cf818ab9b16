package org.taperwright.command;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.UnsupportedCharsetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.taperwright.command.input.BadInput;
import org.taperwright.library.exchange.table.ColumnMappings;
import org.taperwright.library.exchange.table.TableKind;
import picocli.CommandLine.Option;

/** Options on how a table is read. */
final class TableChoices {
    /** Far more than the mappings of a hundred tables take, bytes. */
    private static final long LARGEST_MAP = 4_000_000;

    @Option(
            names = "--kind",
            paramLabel = "KIND",
            description = "What the rows of a table are: instruments or motors. Instruments unless given.")
    private String kind = "instruments";

    @Option(
            names = "--map",
            paramLabel = "FILE",
            description =
                    "Which column means which field, as --columns prints it. Guessed from the headings unless given.")
    private Optional<Path> map = Optional.empty();

    @Option(
            names = "--encoding",
            paramLabel = "NAME",
            description = "The encoding of a table that is not in UTF-8, such as ISO-8859-1.")
    private Optional<String> encoding = Optional.empty();

    TableKind kind() {
        return kind(kind);
    }

    static TableKind kind(String word) {
        return Arrays.stream(TableKind.values())
                .filter(each -> each.name().toLowerCase(Locale.ROOT).equals(word.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(
                        () -> BadInput.of("--kind: \"" + word + "\" has no table", "expected instruments or motors"));
    }

    Optional<Charset> charset() {
        return encoding.map(name -> {
            try {
                return Charset.forName(name);
            } catch (IllegalCharsetNameException | UnsupportedCharsetException unknown) {
                throw BadInput.of("--encoding: \"" + name + "\" is no encoding", "expected one such as ISO-8859-1");
            }
        });
    }

    ColumnMappings mappings() {
        if (map.isEmpty()) {
            return ColumnMappings.NONE;
        }
        if (map.get().toFile().length() > LARGEST_MAP) {
            throw BadInput.of(map.get() + ": is too large", "expected a file of mappings, as --columns prints it");
        }
        ColumnMappings.Result result;
        try {
            result = ColumnMappings.read(Files.readString(map.get()), map.get().toString());
        } catch (IOException unreadable) {
            throw BadInput.of(
                    map.get() + ": cannot be read (" + unreadable.getMessage() + ")", "expected a file of mappings");
        }
        if (result instanceof ColumnMappings.Refused refused) {
            throw BadInput.in(refused.faults());
        }
        return ((ColumnMappings.Read) result).mappings();
    }

    /** Whether the mapping was given, so that a table it does not fit must not be guessed at. */
    boolean mapped() {
        return map.isPresent();
    }
}
