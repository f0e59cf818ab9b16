package org.taperwright.library.store;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Which backups are kept: the newest ones, the newest of each of the last days that have one, and always the one with the
 * longest past, so that no row of backups of a library begun anew can push out the old library's last one.
 *
 * @param newest how many of the newest
 * @param days how many days
 */
public record BackupPolicy(int newest, int days) {
    /** Five newest and fourteen days. */
    public static final BackupPolicy USUAL = new BackupPolicy(5, 14);

    public BackupPolicy {
        if (newest < 1 || days < 0) {
            throw new IllegalArgumentException("at least one backup is kept");
        }
    }

    /** Those of some backups that are kept. */
    public Set<Backup> kept(List<Backup> backups) {
        List<Backup> byAge = backups.stream()
                .sorted(Comparator.comparing(Backup::at).reversed())
                .toList();
        Set<Backup> kept = new LinkedHashSet<>(byAge.subList(0, Math.min(newest, byAge.size())));
        Set<LocalDate> seen = new HashSet<>();
        for (Backup backup : byAge) {
            LocalDate day = LocalDate.ofInstant(backup.at(), ZoneOffset.UTC);
            if (seen.size() < days && seen.add(day)) {
                kept.add(backup);
            }
        }
        byAge.stream().max(Comparator.comparingLong(Backup::revisions)).ifPresent(kept::add);
        return kept;
    }
}
