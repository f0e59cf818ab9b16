package org.taperwright.application;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.store.Contents;
import org.taperwright.library.store.Draft;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.LibraryStore;
import org.taperwright.library.store.OpenResult;
import org.taperwright.library.store.ThingKind;
import org.taperwright.shaping.instrument.Instrument;

/**
 * Another program on the same library, in a process of its own: for each line of its input it gives an instrument that lot,
 * on top of what is stored, and answers with what came of it.
 */
public final class OtherProgram {
    private OtherProgram() {}

    /** Arguments: the library's file, the instrument's name. */
    public static void main(String[] arguments) throws IOException {
        OpenResult opened = LibraryStore.open(Path.of(arguments[0]), JsonForms.forStore());
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        try (LibraryStore store = ((OpenResult.Opened) opened).store()) {
            System.out.println("ready");
            for (String lot = in.readLine(); lot != null; lot = in.readLine()) {
                Contents contents = store.contents();
                Entry entry = contents.snapshot().ofKind(ThingKind.INSTRUMENT).stream()
                        .filter(each -> each.name().equals(arguments[1]))
                        .findFirst()
                        .orElseThrow();
                Instrument before = (Instrument) entry.thing();
                Instrument after =
                        before.draft().supply(before.supply().withLot(lot)).instrument();
                long head = contents.heads().get(entry.id());
                Draft draft = new Draft(entry.id(), ThingKind.INSTRUMENT, Optional.of(after), head);
                System.out.println(store.append("Lot to " + lot, "Ada", Instant.now(), List.of(draft))
                        .getClass()
                        .getSimpleName());
            }
        }
    }
}
