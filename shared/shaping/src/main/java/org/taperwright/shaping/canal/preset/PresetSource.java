package org.taperwright.shaping.canal.preset;

import java.util.List;

/** Plug-in point: canals as they are on average. Register an implementation by a service line. */
public interface PresetSource {
    /** The presets, in the order in which they are offered. */
    List<CanalPreset> presets();
}
