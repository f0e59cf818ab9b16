package org.taperwright.comparer.ui;

/**
 * How far the user has moved and magnified the map.
 *
 * @param acrossShare move of what is shown to the right, as a share of the axis
 * @param upShare move upwards, as a share of the axis
 * @param zoom magnification; 1 shows everything
 */
record MapView(double acrossShare, double upShare, double zoom) {
    static final MapView WHOLE = new MapView(0, 0, 1);

    private static final double MOST = 40;
    private static final double LEAST = 0.05;

    /** Moved further. */
    MapView moved(double acrossMore, double upMore) {
        return new MapView(acrossShare + acrossMore, upShare + upMore, zoom);
    }

    /** Magnified about a place given by its shares of the axes. */
    MapView magnified(double factor, double acrossAt, double upAt) {
        double next = Math.max(LEAST, Math.min(MOST, zoom * factor));
        double by = next / zoom;
        return new MapView(acrossAt + by * (acrossShare - acrossAt), upAt + by * (upShare - upAt), next);
    }

    /** The part of an axis that is then seen. */
    LogAxis seen(LogAxis whole, boolean isAcross) {
        double length = Math.log(whole.high() / whole.low());
        double move = isAcross ? acrossShare : upShare;
        double from = Math.log(whole.low()) - move / zoom * length;
        return new LogAxis(Math.exp(from), Math.exp(from + length / zoom));
    }
}
