package org.taperwright.workbench.api;

import java.util.List;
import org.taperwright.library.history.Change;

/**
 * An edit worked out, not made yet.
 *
 * @param name its name
 * @param changes what it changes; nothing when there is nothing to do
 */
public record NamedEdit(String name, List<Change> changes) {
    public NamedEdit {
        changes = List.copyOf(changes);
    }
}
