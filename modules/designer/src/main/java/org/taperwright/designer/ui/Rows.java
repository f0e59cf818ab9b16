package org.taperwright.designer.ui;

import java.util.ArrayList;
import java.util.List;

/** Lists with one row changed. */
final class Rows {
    private Rows() {}

    /** A list with the element at an index replaced. */
    static <T> List<T> replaced(List<T> list, int index, T element) {
        List<T> changed = new ArrayList<>(list);
        changed.set(index, element);
        return changed;
    }

    /** A list without the element at an index. */
    static <T> List<T> without(List<T> list, int index) {
        List<T> changed = new ArrayList<>(list);
        changed.remove(index);
        return changed;
    }
}
