package org.taperwright.sequencer.scene;

import java.awt.FontMetrics;

/**
 * Where things stand in the scene, px at 100 % scale.
 *
 * @param width the scene's width
 * @param lineHeight height of a line of text
 * @param silhouette height in which a silhouette is drawn
 */
record SceneLayout(int width, int lineHeight, int silhouette) {
    private static final int LEAST_SILHOUETTE = 44;
    private static final int MOST_SILHOUETTE = 96;
    /** Narrowest scene in which its words still find room. */
    static final int NARROWEST = 460;

    private static final int GAP = 4;
    private static final int EDGE = 8;

    /** The layout for a view of a size: silhouettes are as high as all lanes leave room for, within limits. */
    static SceneLayout of(int width, int height, int lanes, FontMetrics metrics) {
        SceneLayout least = new SceneLayout(Math.max(NARROWEST, width), metrics.getHeight(), LEAST_SILHOUETTE);
        int spare = (height - least.height(lanes)) / (lanes + 1);
        int silhouette = Math.max(LEAST_SILHOUETTE, Math.min(MOST_SILHOUETTE, LEAST_SILHOUETTE + spare));
        return new SceneLayout(least.width(), least.lineHeight(), silhouette);
    }

    /** Where the drawing begins: right of the labels. */
    int left() {
        return Math.max(152, Math.min(208, width / 4));
    }

    /** Where the drawing ends. */
    int right() {
        return width - EDGE;
    }

    /** Height of the head with the canal, its thirds and the depth scale. */
    int headHeight() {
        return EDGE + 3 * lineHeight + 2 * GAP + silhouette + GAP;
    }

    /** Height of a lane. */
    int laneHeight() {
        return EDGE + Math.max(silhouette + GAP + lineHeight, 3 * lineHeight) + EDGE;
    }

    /** Top of a lane. */
    int laneTop(int index) {
        return headHeight() + index * laneHeight();
    }

    /** Middle of the silhouette within a lane. */
    double axisInLane() {
        return EDGE + silhouette / 2.0;
    }

    /** Baseline region of the numbers beneath the silhouette, within a lane. */
    int numbersTop() {
        return EDGE + silhouette + GAP;
    }

    /** Middle of the canal's own silhouette within the head. */
    double axisInHead() {
        return headHeight() - GAP - silhouette / 2.0;
    }

    /** Index before which something dropped at a height stands, given how many lanes there are. */
    int placeAt(int y, int lanes) {
        int place = (int) Math.round((y - headHeight()) / (double) laneHeight());
        return Math.max(0, Math.min(lanes, place));
    }

    /** Height of the whole scene. */
    int height(int lanes) {
        return laneTop(lanes) + EDGE;
    }
}
