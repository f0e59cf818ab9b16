package org.taperwright.library.store;

import java.util.Locale;
import java.util.Optional;
import org.taperwright.mechanics.work.Fault;

/**
 * How much a library has room for: while it is open all its things are in memory, with what windows make of them. A thing
 * of 100,000 takes about 1.7 KiB (measured), so an import that is planned beside it is reckoned at thrice that, and a
 * library that is opened at one and a half times.
 *
 * <p>An import never has more room than the workbench is given, however much memory the program that makes it has, so that
 * the workbench can open what was stored.
 *
 * @param memory what the program may use, bytes
 */
public record Room(long memory) {
    private static final long WORKBENCH = 1L << 30;
    private static final long IMPORTED = 5 << 10;
    private static final long OPENED = 5 << 9;
    private static final long MEGABYTE = 1_000_000;

    /** The room that this program has. */
    public static Room ofThisProgram() {
        return new Room(Runtime.getRuntime().maxMemory());
    }

    /** How many things a library may hold after an import. */
    public long things() {
        return importing() / IMPORTED;
    }

    /** How large a file may be whose things come in, bytes. */
    public long bytes() {
        return importing() / 4;
    }

    private long importing() {
        return Math.min(memory, WORKBENCH);
    }

    /** Why a file of so many bytes is too large to come in; empty when it is not. */
    public Optional<Fault> tooLarge(long size) {
        return size <= bytes()
                ? Optional.empty()
                : Optional.of(Fault.impossible(
                        "file",
                        "is of " + megabytes(size),
                        "expected at most " + megabytes(bytes()) + ", for which the memory has room: split it"));
    }

    /** Why so many things on offer are too many for a library that holds others already; empty when they are not. */
    public Optional<Fault> tooMany(long offered, long held) {
        return offered + held <= things()
                ? Optional.empty()
                : Optional.of(Fault.impossible(
                        "file",
                        String.format(
                                Locale.UK,
                                "holds more than the %,d things for which the library has room beside its %,d",
                                Math.max(0, things() - held),
                                held),
                        String.format(
                                Locale.UK,
                                "expected at most %,d together in %s of memory: split the file, or keep a part in"
                                        + " another library",
                                things(),
                                megabytes(importing()))));
    }

    /** Why a library of so many things cannot be opened; empty when it can. */
    Optional<Fault> tooMany(String where, long held) {
        return held <= memory / OPENED
                ? Optional.empty()
                : Optional.of(Fault.impossible(
                        where,
                        String.format(Locale.UK, "holds %,d things", held),
                        String.format(
                                Locale.UK,
                                "expected at most %,d, for which %s of memory have room: give the program more",
                                memory / OPENED,
                                megabytes(memory))));
    }

    private static String megabytes(long bytes) {
        return String.format(Locale.UK, "%,d MB", bytes / MEGABYTE);
    }
}
