package org.taperwright.library.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.taperwright.mechanics.work.Fault;

/**
 * Backups of a library's file in a folder. A backup is written under a passing name, checked whole, and only then given
 * its name; one of a damaged or empty library is never kept, and nothing is thrown away before the new one stands.
 */
public final class Backups {
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);
    private static final String ENDING = ".backup";
    private static final List<String> BESIDE = List.of("-wal", "-shm", "-journal");

    private final Path library;
    private final Path folder;
    private final ThingForms forms;
    private final BackupPolicy policy;

    /**
     * Backups of a library.
     *
     * @param library the library's file
     * @param folder where its backups lie; made when the first is taken
     * @param forms the forms of its things
     * @param policy which are kept
     */
    public Backups(Path library, Path folder, ThingForms forms, BackupPolicy policy) {
        this.library = library.toAbsolutePath();
        this.folder = folder.toAbsolutePath();
        this.forms = forms;
        this.policy = policy;
    }

    /** Takes a backup unless the newest one holds everything; then lets go of those the policy does not keep. */
    public synchronized BackupResult take(Instant now) {
        try {
            SqliteFile file = new SqliteFile(library);
            if (!Files.isRegularFile(library)) {
                return refused(library, "is no file", "expected a library to back up");
            }
            List<Backup> good = good();
            long revisions = file.look().map(SqliteFile.Look::revisions).orElse(0L);
            if (!good.isEmpty() && good.get(0).revisions() == revisions && revisions > 0) {
                return new BackupResult.Unchanged(good.get(0));
            }
            Files.createDirectories(folder);
            return written(file, now, good);
        } catch (IOException | SQLException | StoreFailure failure) {
            return refused(library, "could not be backed up (" + failure.getMessage() + ")", "expected room to write");
        }
    }

    private BackupResult written(SqliteFile file, Instant now, List<Backup> good) throws IOException, SQLException {
        Path passing = folder.resolve(library.getFileName() + "." + STAMP.format(now) + ".unfinished");
        try {
            Files.deleteIfExists(passing);
            file.copyTo(passing);
            CheckReport report = LibraryCheck.of(passing, forms);
            if (!report.sound()) {
                String first = report.findings().stream()
                        .filter(Finding::grave)
                        .findFirst()
                        .map(finding -> finding.fault().what())
                        .orElse("");
                return refused(library, "is not sound: " + first, "expected a whole library; older backups are kept");
            }
            if (report.revisions() == 0) {
                return refused(library, "is empty", "expected something to back up; older backups are kept");
            }
            synchronise(passing);
            Path named = folder.resolve(library.getFileName() + "." + STAMP.format(now) + ENDING);
            Files.move(passing, named, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            Backup taken = new Backup(named, when(named).orElse(now), report.things(), report.revisions());
            letGo(taken, good);
            return new BackupResult.Taken(taken);
        } finally {
            Files.deleteIfExists(passing);
        }
    }

    private void letGo(Backup taken, List<Backup> before) throws IOException {
        List<Backup> all = new ArrayList<>(before);
        all.removeIf(old -> old.file().equals(taken.file()));
        all.add(taken);
        Set<Backup> kept = policy.kept(all);
        for (Backup backup : all) {
            if (!kept.contains(backup)) {
                Files.deleteIfExists(backup.file());
            }
        }
    }

    /** The backups that are whole and hold something, newest first. */
    public List<Backup> good() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.flatMap(file -> backup(file).stream())
                    .sorted(Comparator.comparing(Backup::at).reversed())
                    .toList();
        } catch (IOException unreachable) {
            throw new StoreFailure("the backups cannot be listed (" + unreachable.getMessage() + ")", unreachable);
        }
    }

    private Optional<Backup> backup(Path file) {
        return when(file)
                .flatMap(at -> new SqliteFile(file)
                        .look()
                        .filter(look -> look.revisions() > 0)
                        .map(look -> new Backup(file, at, look.things(), look.revisions())));
    }

    /** The time in a backup's name; empty when the file is none of this library's backups. */
    private Optional<Instant> when(Path file) {
        String name = file.getFileName().toString();
        String beginning = library.getFileName() + ".";
        if (!name.startsWith(beginning) || !name.endsWith(ENDING)) {
            return Optional.empty();
        }
        String stamp = name.substring(beginning.length(), name.length() - ENDING.length());
        try {
            return Optional.of(LocalDateTime.parse(stamp, STAMP).toInstant(ZoneOffset.UTC));
        } catch (DateTimeException other) {
            return Optional.empty();
        }
    }

    /**
     * Puts a copy of a backup in the library's place. The file that stands there is set aside beside it, never deleted; the
     * library must not be open.
     */
    public synchronized RestoreResult restore(Backup backup, Instant now) {
        CheckReport report = LibraryCheck.of(backup.file(), forms);
        if (!report.sound()) {
            return new RestoreResult.Refused(
                    Fault.impossible(backup.file().toString(), "is not sound", "expected a whole backup"));
        }
        Path passing = beside(".restoring");
        try {
            Files.createDirectories(library.getParent());
            Files.copy(backup.file(), passing, StandardCopyOption.REPLACE_EXISTING);
            synchronise(passing);
            Optional<Path> aside = setAside(now);
            Files.move(passing, library, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            return new RestoreResult.Restored(aside);
        } catch (IOException failure) {
            return new RestoreResult.Refused(Fault.impossible(
                    library.toString(),
                    "could not be restored (" + failure.getMessage() + ")",
                    "expected room beside it that can be written"));
        }
    }

    /** What SQLite keeps beside the file goes first: left there, it would be taken for part of the restored one. */
    private Optional<Path> setAside(Instant now) throws IOException {
        String ending = ".set-aside-" + STAMP.format(now);
        for (String part : BESIDE) {
            if (Files.exists(beside(part))) {
                Files.move(beside(part), free(ending, part));
            }
        }
        if (!Files.exists(library)) {
            return Optional.empty();
        }
        Path aside = free(ending, "");
        Files.move(library, aside);
        return Optional.of(aside);
    }

    /** A name that no file has, so that nothing set aside earlier is overwritten. */
    private Path free(String ending, String part) {
        Path name = beside(ending + part);
        for (int number = 2; Files.exists(name); number++) {
            name = beside(ending + '-' + number + part);
        }
        return name;
    }

    private Path beside(String ending) {
        return library.resolveSibling(library.getFileName() + ending);
    }

    private static void synchronise(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    private static BackupResult refused(Path file, String what, String expected) {
        return new BackupResult.Refused(Fault.impossible(file.toString(), what, expected));
    }
}
