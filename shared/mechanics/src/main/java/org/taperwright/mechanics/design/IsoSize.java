package org.taperwright.mechanics.design;

/**
 * A size of the standard's series with its nominal diameters at the standard taper of 0.02.
 *
 * @param number projected tip diameter in hundredths of a millimetre
 * @param colour the colour that marks it
 */
public record IsoSize(int number, SizeColour colour) {
    /** As written: {@code 06}, {@code 25}, {@code 140}. */
    public String text() {
        return IsoSizes.text(number);
    }

    /** Projected diameter at the tip, d0, mm. */
    public double d0Mm() {
        return diameterMm(0);
    }

    /** Diameter 1 mm from the tip, mm. */
    public double d1Mm() {
        return diameterMm(1);
    }

    /** Diameter 3 mm from the tip, mm. */
    public double d3Mm() {
        return diameterMm(3);
    }

    /** Diameter 16 mm from the tip, where the working part ends, mm. */
    public double d16Mm() {
        return diameterMm(16);
    }

    /** Nominal diameter at a level of the working part: {@code d0 + 0.02 level}, mm. */
    public double diameterMm(int levelMm) {
        return (number + 2 * levelMm) / 100.0;
    }

    /** How far a diameter may be off nominal, mm: 0.02 up to size 60, 0.04 above (from memory, medium confidence). */
    public double toleranceMm() {
        return number <= 60 ? 0.02 : 0.04;
    }
}
