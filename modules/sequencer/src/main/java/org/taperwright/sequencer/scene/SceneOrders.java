package org.taperwright.sequencer.scene;

import java.util.List;
import org.taperwright.mechanics.design.ThingId;

/** What a person asks of a sequence in its scene. Steps are counted from 0. */
public interface SceneOrders {
    /** Selects a step. */
    void select(int step);

    /** Tries a depth while a silhouette is dragged, mm from the coronal reference point. */
    void tryDepth(int step, double depthMm);

    /** Puts a step's tip at a depth, mm from the coronal reference point. */
    void setDepth(int step, double depthMm);

    /** Moves a step to another place. */
    void move(int from, int to);

    /** Adds steps with these instruments before a place. */
    void insert(int place, List<ThingId> instruments);
}
