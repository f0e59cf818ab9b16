package org.taperwright.library.history;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.taperwright.library.Examples;
import org.taperwright.library.TestLibrary;
import org.taperwright.library.store.Entry;
import org.taperwright.mechanics.design.ThingId;

/**
 * A program that edits a library until it is killed and prints the number of each edit once it is acknowledged. Every edit
 * renames three things together, every seventh as many more as it was told, as an import does.
 */
final class EditingProgram {
    static final List<ThingId> THREE = List.of(new ThingId("a"), new ThingId("b"), new ThingId("c"));
    static final int SEVENTH = 7;

    private EditingProgram() {}

    /** The library's file, and how many things every seventh edit changes besides. */
    public static void main(String[] arguments) {
        int many = Integer.parseInt(arguments[1]);
        EditHistory history =
                new EditHistory(TestLibrary.open(Path.of(arguments[0])), "someone", Runnable::run, Clock.systemUTC());
        int number = history.snapshot()
                .entry(THREE.get(0))
                .map(Entry::name)
                .map(Integer::valueOf)
                .orElse(0);
        System.out.println("ready");
        while (true) {
            number++;
            history.edit("Edit " + number, changes(number, many));
            System.out.println(number);
        }
    }

    private static List<Change> changes(int number, int many) {
        List<Change> changes = new ArrayList<>();
        for (ThingId id : THREE) {
            changes.add(new Change.Put(id, Examples.plainDesign(String.valueOf(number))));
        }
        for (int i = 0; number % SEVENTH == 0 && i < many; i++) {
            changes.add(new Change.Put(many(i), Examples.plainDesign(String.valueOf(number))));
        }
        return changes;
    }

    static ThingId many(int index) {
        return new ThingId("many-" + index);
    }
}
