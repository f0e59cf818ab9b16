package org.taperwright.shaping.instrument;

/**
 * Gauges of needle tubing: the greatest outside diameter and the least bore of regular wall that the standard allows, so that a needle
 * reaches no deeper than said. Source: ISO 9626:1991 with amendment 1:2001, table 1 (from memory, medium confidence).
 */
public enum NeedleGauge {
    G23(0.673, 0.317),
    G24(0.580, 0.280),
    G25(0.530, 0.232),
    G26(0.470, 0.232),
    G27(0.420, 0.184),
    G28(0.370, 0.133),
    G29(0.351, 0.133),
    G30(0.320, 0.133),
    G31(0.267, 0.114);

    private final double outerMm;
    private final double boreMm;

    NeedleGauge(double outerMm, double boreMm) {
        this.outerMm = outerMm;
        this.boreMm = boreMm;
    }

    /** Greatest outside diameter, mm. */
    public double outerMm() {
        return outerMm;
    }

    /** Least bore, mm. */
    public double boreMm() {
        return boreMm;
    }

    /** How it is written: {@code 27G}. */
    public String word() {
        return name().substring(1) + "G";
    }
}
