package org.taperwright.sequencer.scene;

import java.util.List;
import org.taperwright.shaping.canal.Canal;

/**
 * What the scene shows.
 *
 * @param canal the canal the sequence is tried in
 * @param lanes one for each step, in order
 * @param selected index of the selected step; -1 for none
 */
public record SceneContent(Canal canal, List<LaneContent> lanes, int selected) {
    public SceneContent {
        lanes = List.copyOf(lanes);
    }
}
