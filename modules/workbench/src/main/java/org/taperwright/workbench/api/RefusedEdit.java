package org.taperwright.workbench.api;

import java.util.List;
import java.util.stream.Collectors;
import org.taperwright.mechanics.work.Fault;

/**
 * An edit that was not made.
 *
 * @param name its name
 * @param faults why not
 */
public record RefusedEdit(String name, List<Fault> faults) {
    public RefusedEdit {
        faults = List.copyOf(faults);
    }

    /** What a person reads: which edit, and why it was not made. */
    public String sentence() {
        return faults.stream()
                .map(fault -> fault.where() + " " + fault.what() + "; " + fault.expected())
                .distinct()
                .collect(Collectors.joining(". ", "“" + name + "” was not done: ", ". Nothing was changed."));
    }
}
