package org.taperwright.shaping.canal.preset;

import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;

/** All presets of all {@link PresetSource sources}, in the order of the service lines. */
public final class CanalPresets {
    private static final List<CanalPreset> ALL =
            ServiceLoader.load(PresetSource.class, CanalPresets.class.getClassLoader()).stream()
                    .flatMap(source -> source.get().presets().stream())
                    .toList();

    private CanalPresets() {}

    /** All of them. */
    public static List<CanalPreset> all() {
        return ALL;
    }

    /** The one with an identifier. */
    public static Optional<CanalPreset> find(String id) {
        return ALL.stream().filter(preset -> preset.id().equals(id)).findFirst();
    }
}
