package org.taperwright.shaping.finish;

/**
 * A cone that fills a canal.
 *
 * @param size size at the tip, hundredths of a millimetre
 * @param taper taper, mm/mm
 */
public record Cone(int size, double taper) {
    private static final int LAST_FINE_SIZE = 25;
    private static final double FINE_MM = 0.05;
    private static final double COARSE_MM = 0.07;

    /** Diameter at the tip, mm. */
    public double tipMm() {
        return size / 100.0;
    }

    /**
     * How far its diameter may be off, mm: 0.05 to size 25, 0.07 beyond (ISO 6877:1995 and 2006 for taper 0.02, from memory, medium
     * confidence; taken to hold for other tapers; later editions not checked).
     */
    public double toleranceMm() {
        return size <= LAST_FINE_SIZE ? FINE_MM : COARSE_MM;
    }
}
