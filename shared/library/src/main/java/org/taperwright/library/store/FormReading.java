package org.taperwright.library.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;

/**
 * Reads the forms of many rows, some on the machine's other cores while the database delivers more. The caller takes a
 * batch upon itself when the others have enough to do, so that the texts that wait stay few.
 */
final class FormReading {
    private static final int BATCH = 1024;

    private final ThingForms forms;
    private final int most = Math.max(1, Runtime.getRuntime().availableProcessors());
    private final List<CompletableFuture<List<Revision>>> batches = new ArrayList<>();
    private List<StoredRow> batch = new ArrayList<>(BATCH);

    FormReading(ThingForms forms) {
        this.forms = forms;
    }

    void add(StoredRow row) {
        batch.add(row);
        if (batch.size() == BATCH) {
            hand();
        }
    }

    private void hand() {
        List<StoredRow> rows = batch;
        batch = new ArrayList<>(BATCH);
        long unread = batches.stream().filter(each -> !each.isDone()).count();
        batches.add(
                unread < most
                        ? CompletableFuture.supplyAsync(() -> read(rows))
                        : CompletableFuture.completedFuture(read(rows)));
    }

    private List<Revision> read(List<StoredRow> rows) {
        List<Revision> read = new ArrayList<>(rows.size());
        String made = "";
        Instant at = Instant.EPOCH;
        for (StoredRow row : rows) {
            if (!row.madeAt().equals(made)) {
                made = row.madeAt();
                at = Instant.parse(made);
            }
            read.add(row.read(forms, at));
        }
        return read;
    }

    /** Hands over all, in the order in which the rows came. */
    void finish(Consumer<Revision> told) {
        List<Revision> last = read(batch);
        for (CompletableFuture<List<Revision>> each : batches) {
            each.join().forEach(told);
        }
        last.forEach(told);
    }
}
