package org.taperwright.mechanics.alloy;

import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;

/** The stress laws that service lines register. */
public final class StressLaws {
    private static final List<StressLaw> ALL =
            ServiceLoader.load(StressLaw.class, StressLaws.class.getClassLoader()).stream()
                    .map(ServiceLoader.Provider::get)
                    .toList();

    private StressLaws() {}

    /** All laws. */
    public static List<StressLaw> all() {
        return ALL;
    }

    /** The law with an identifier. */
    public static Optional<StressLaw> find(String id) {
        return ALL.stream().filter(law -> law.id().equals(id)).findFirst();
    }
}
