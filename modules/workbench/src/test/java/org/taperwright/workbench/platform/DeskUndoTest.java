package org.taperwright.workbench.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.undo.CannotUndoException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.taperwright.workbench.desk.DeskOnDisk;

class DeskUndoTest {
    @Test
    void thePlatformSeesTheNamesOfTheDesksEdits(@TempDir Path folder) {
        try (DeskOnDisk onDisk = new DeskOnDisk(folder)) {
            DeskUndo undo = new DeskUndo(onDisk.desk());
            assertThat(undo.canUndo()).isFalse();
            onDisk.desk().edit("New motor", DeskOnDisk.naming("First"));
            assertThat(undo.canUndo()).isTrue();
            assertThat(undo.getUndoPresentationName()).isEqualTo("New motor");
            undo.undo();
            assertThat(undo.canUndo()).isFalse();
            assertThat(undo.getRedoPresentationName()).isEqualTo("New motor");
        }
    }

    @Test
    void thePlatformIsToldOfEveryEdit(@TempDir Path folder) {
        try (DeskOnDisk onDisk = new DeskOnDisk(folder)) {
            AtomicInteger told = new AtomicInteger();
            DeskUndo undo = new DeskUndo(onDisk.desk());
            undo.addChangeListener(event -> told.incrementAndGet());
            onDisk.desk().edit("New motor", DeskOnDisk.naming("First"));
            undo.undo();
            assertThat(told).hasValue(2);
        }
    }

    @Test
    void undoingNothingIsRefused(@TempDir Path folder) {
        try (DeskOnDisk onDisk = new DeskOnDisk(folder)) {
            assertThatThrownBy(new DeskUndo(onDisk.desk())::undo).isInstanceOf(CannotUndoException.class);
        }
    }
}
