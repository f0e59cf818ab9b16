package org.taperwright.library.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.taperwright.library.Examples;
import org.taperwright.library.TestLibrary;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.exchange.ReadResult;
import org.taperwright.library.store.LibraryStore;
import org.taperwright.library.store.Revision;

class NewLibraryTest {
    private static final ReadResult DEMO = JsonForms.read(JsonForms.write(Examples.bundle()), "demo");

    @TempDir
    private Path folder;

    private LibraryStore open() {
        return TestLibrary.open(folder.resolve("l.db"));
    }

    @Test
    void aNewLibraryIsFilledByOneEditThatUndoDoesNotTakeBack() {
        LibraryStore store = open();
        assertThat(NewLibrary.seed(store, "someone", DEMO)).isEmpty();
        try (EditHistory history = new EditHistory(store, "someone", Runnable::run, Clock.systemUTC())) {
            assertThat(history.snapshot().entries()).hasSize(Examples.all().size());
            assertThat(history.nextUndo()).isEmpty();
            assertThat(history.pastOf(Examples.DESIGN_ID))
                    .extracting(Revision::edit)
                    .containsExactly("Demo library");
        }
    }

    @Test
    void aLibraryThatWasOnceFilledIsLeftAlone() {
        LibraryStore store = open();
        NewLibrary.seed(store, "someone", DEMO);
        try (EditHistory history = new EditHistory(store, "someone", Runnable::run, Clock.systemUTC())) {
            history.edit(
                    "Take all out",
                    history.snapshot().entries().keySet().stream()
                            .<Change>map(Change.Remove::new)
                            .toList());
        }
        try (LibraryStore again = open()) {
            assertThat(NewLibrary.seed(again, "someone", DEMO)).isEmpty();
            assertThat(again.contents().snapshot().entries()).isEmpty();
        }
    }

    @Test
    void aDemoLibraryThatIsRefusedLeavesTheStoreEmptyAndSaysWhy() {
        try (LibraryStore store = open()) {
            assertThat(NewLibrary.seed(store, "someone", JsonForms.read("{}", "demo")))
                    .extracting(fault -> fault.source())
                    .isEqualTo(List.of("demo"));
            assertThat(store.contents().snapshot().revision()).isZero();
        }
    }
}
