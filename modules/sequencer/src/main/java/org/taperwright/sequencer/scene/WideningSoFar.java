package org.taperwright.sequencer.scene;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.passage.Silhouette;

/**
 * What stands at each depth before a step: the canal's opening joined with the circles of the steps before, all about
 * the centreline. Depths are from the coronal reference point, mm.
 */
final class WideningSoFar {
    private final SceneContent content;
    private final CanalGeometry canal;
    private final List<Silhouette> before = new ArrayList<>();

    WideningSoFar(SceneContent content, int step) {
        this.content = content;
        canal = new CanalGeometry(content.canal());
        for (LaneContent lane : content.lanes().subList(0, step)) {
            lane.instrument()
                    .ifPresent(instrument ->
                            before.add(new Silhouette(instrument.design(), canal.depthOfMm(lane.depthMm()))));
        }
    }

    /** Greater diameter, mm. */
    double wideMm(double depthMm) {
        double depth = canal.depthOfMm(depthMm);
        return Math.max(within(depth) ? canal.wideMm(depth) : 0, earlierMm(depth));
    }

    /** Lesser diameter, mm. */
    double narrowMm(double depthMm) {
        double depth = canal.depthOfMm(depthMm);
        return Math.max(within(depth) ? canal.narrowMm(depth) : 0, earlierMm(depth));
    }

    /** Depth where the canal or what was opened beyond it ends. */
    double endMm() {
        double end = content.canal().lengthMm();
        for (Silhouette silhouette : before) {
            end = Math.max(end, silhouette.tipDepthMm());
        }
        return content.canal().coronalReferenceMm() + end;
    }

    private boolean within(double depth) {
        return depth >= 0 && depth <= content.canal().lengthMm();
    }

    private double earlierMm(double depth) {
        double widest = 0;
        for (Silhouette silhouette : before) {
            widest = Math.max(widest, silhouette.diameterMm(depth));
        }
        return widest;
    }
}
