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
 * renames three things together, every seventh a hundred more.
 */
final class EditingProgram {
    static final List<ThingId> THREE = List.of(new ThingId("a"), new ThingId("b"), new ThingId("c"));
    static final int SEVENTH = 7;
    static final int MANY = 100;

    private EditingProgram() {}

    public static void main(String[] arguments) {
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
            history.edit("Edit " + number, changes(number));
            System.out.println(number);
        }
    }

    private static List<Change> changes(int number) {
        List<Change> changes = new ArrayList<>();
        for (ThingId id : THREE) {
            changes.add(new Change.Put(id, Examples.plainDesign(String.valueOf(number))));
        }
        for (int i = 0; number % SEVENTH == 0 && i < MANY; i++) {
            changes.add(new Change.Put(many(i), Examples.plainDesign(String.valueOf(number))));
        }
        return changes;
    }

    static ThingId many(int index) {
        return new ThingId("many-" + index);
    }
}
