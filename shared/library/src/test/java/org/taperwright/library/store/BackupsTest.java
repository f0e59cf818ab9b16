package org.taperwright.library.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.taperwright.library.Examples;
import org.taperwright.library.TestLibrary;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.mechanics.design.ThingId;

class BackupsTest {
    private static final Instant NOON = Instant.parse("2031-05-06T12:00:00Z");

    @TempDir
    private Path folder;

    private Path file;
    private Path kept;
    private Backups backups;

    @BeforeEach
    void fill() {
        file = folder.resolve("library.sqlite");
        kept = folder.resolve("backups");
        backups = new Backups(file, kept, JsonForms.forStore(), new BackupPolicy(2, 3));
        edit("first");
    }

    private void edit(String id) {
        try (LibraryStore store = TestLibrary.open(file)) {
            Draft draft = new Draft(new ThingId(id), ThingKind.DESIGN, Optional.of(Examples.plainDesign(id)), 0);
            store.append("Add " + id, "someone", NOON, List.of(draft));
        }
    }

    private Backup taken(Instant at) {
        BackupResult result = backups.take(at);
        assertThat(result).isInstanceOf(BackupResult.Taken.class);
        return ((BackupResult.Taken) result).backup();
    }

    private String refusal(Instant at) {
        BackupResult result = backups.take(at);
        assertThat(result).isInstanceOf(BackupResult.Refused.class);
        return ((BackupResult.Refused) result).fault().sentence();
    }

    private List<String> files() throws IOException {
        try (Stream<Path> files = Files.list(kept)) {
            return files.map(each -> each.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void aBackupIsASoundLibraryWithDateAndCount() throws IOException {
        try (LibraryStore open = TestLibrary.open(file)) {
            assertThat(open.contents().heads()).hasSize(1);
            Backup backup = taken(NOON);
            assertThat(backup.things()).isEqualTo(1);
            assertThat(backup.revisions()).isEqualTo(1);
            assertThat(backups.good()).containsExactly(backup);
            assertThat(LibraryCheck.of(backup.file(), JsonForms.forStore()).findings())
                    .isEmpty();
        }
        assertThat(files()).containsExactly("library.sqlite.20310506T120000Z.backup");
    }

    @Test
    void nothingNewIsNotBackedUpAgain() throws IOException {
        Backup first = taken(NOON);
        assertThat(backups.take(NOON.plusSeconds(60))).isEqualTo(new BackupResult.Unchanged(first));
        assertThat(files()).hasSize(1);
    }

    @Test
    void theNewestOnesAndOneADayAreKept() {
        for (int hour = 0; hour < 100; hour += 10) {
            edit("thing" + hour);
            taken(NOON.plus(Duration.ofHours(hour)));
        }
        assertThat(backups.good())
                .extracting(Backup::at)
                .containsExactly(
                        Instant.parse("2031-05-10T06:00:00Z"),
                        Instant.parse("2031-05-09T20:00:00Z"),
                        Instant.parse("2031-05-08T14:00:00Z"));
    }

    @Test
    void aDamagedLibraryDoesNotReplaceAGoodBackup() throws IOException {
        Backup good = taken(NOON);
        byte[] bytes = Files.readAllBytes(file);
        java.util.Arrays.fill(bytes, 4096, bytes.length, (byte) 0x5a);
        Files.write(file, bytes);
        for (int i = 1; i < 5; i++) {
            assertThat(refusal(NOON.plus(Duration.ofDays(i)))).startsWith(file + ": ");
        }
        assertThat(backups.good()).containsExactly(good);
        assertThat(files()).hasSize(1);
    }

    @Test
    void anEmptyLibraryDoesNotReplaceAGoodBackup() throws IOException {
        Backup good = taken(NOON);
        Files.delete(file);
        TestLibrary.open(file).close();
        assertThat(refusal(NOON.plusSeconds(60)))
                .isEqualTo(file + ": is empty; expected something to back up; older backups are kept");
        assertThat(backups.good()).containsExactly(good);
    }

    @Test
    void aLibraryBegunAnewNeverPushesOutTheLongestPast() throws IOException {
        edit("second");
        edit("third");
        Backup longest = taken(NOON);
        Files.delete(file);
        for (int day = 1; day < 9; day++) {
            Files.deleteIfExists(file);
            edit("anew" + day);
            if (day % 2 == 0) {
                edit("more" + day);
            }
            taken(NOON.plus(Duration.ofDays(day)));
        }
        assertThat(backups.good()).hasSize(4).contains(longest);
    }

    @Test
    void aDamagedLibraryIsSetAsideAndTheBackupStandsInItsPlace() throws IOException {
        Backup good = taken(NOON);
        Files.writeString(file, "damaged");
        Files.writeString(folder.resolve("library.sqlite-wal"), "left over");
        assertThat(LibraryStore.open(file, JsonForms.forStore())).isInstanceOf(OpenResult.Refused.class);
        RestoreResult result = backups.restore(backups.good().get(0), NOON.plusSeconds(60));
        Path aside = folder.resolve("library.sqlite.set-aside-20310506T120100Z");
        assertThat(result).isEqualTo(new RestoreResult.Restored(Optional.of(aside)));
        assertThat(aside).hasContent("damaged");
        assertThat(folder.resolve(aside.getFileName() + "-wal")).hasContent("left over");
        try (LibraryStore restored = TestLibrary.open(file)) {
            assertThat(restored.contents().snapshot().entries()).containsOnlyKeys(new ThingId("first"));
        }
        assertThat(backups.good()).containsExactly(good);
        Files.writeString(file, "damaged again");
        backups.restore(good, NOON.plusSeconds(60));
        assertThat(aside).as("what was set aside stays").hasContent("damaged");
    }

    @Test
    void aDamagedBackupIsNotRestored() throws IOException {
        Backup backup = taken(NOON);
        Files.writeString(backup.file(), "spoilt");
        assertThat(backups.good()).isEmpty();
        assertThat(backups.restore(backup, NOON)).isInstanceOf(RestoreResult.Refused.class);
        assertThat(LibraryCheck.of(file, JsonForms.forStore()).sound()).isTrue();
    }

    @Test
    void backupsAreTakenFromTimeToTime() throws InterruptedException {
        ScheduledExecutorService executor = Executors.newSingleThreadScheduledExecutor();
        CountDownLatch two = new CountDownLatch(2);
        try (TimedBackups timed = new TimedBackups(
                backups, Duration.ZERO, Duration.ofMillis(1), executor, Clock.systemUTC(), result -> two.countDown())) {
            assertThat(timed).isNotNull();
            assertThat(two.await(30, TimeUnit.SECONDS)).isTrue();
        } finally {
            executor.shutdown();
        }
        assertThat(backups.good()).hasSize(1);
    }
}
