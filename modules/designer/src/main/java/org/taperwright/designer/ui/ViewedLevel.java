package org.taperwright.designer.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleConsumer;

/** The level along the blade that the window looks at, mm from the tip. */
final class ViewedLevel {
    private static final double FIRST = 3;

    private final List<DoubleConsumer> listeners = new ArrayList<>();
    private double mm = FIRST;

    double mm() {
        return mm;
    }

    /** Looks at another level. */
    void set(double level) {
        if (level != mm) {
            mm = level;
            listeners.forEach(listener -> listener.accept(level));
        }
    }

    /** Calls back whenever another level is looked at. */
    void onChange(DoubleConsumer listener) {
        listeners.add(listener);
    }
}
