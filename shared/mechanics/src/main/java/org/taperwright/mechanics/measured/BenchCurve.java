package org.taperwright.mechanics.measured;

/** A bench test that gives a curve against an angle in degrees. */
public enum BenchCurve {
    /** Moment at the clamp against the angle of the chord, up to 45 degrees, as in the computed bending test. */
    BENDING("Bending", "moment"),
    /** Torque against the angle turned, up to fracture, as in the computed twisting test. */
    TWISTING("Twisting", "torque");

    private final String label;
    private final String ordinate;

    BenchCurve(String label, String ordinate) {
        this.label = label;
        this.ordinate = ordinate;
    }

    /** Name for people. */
    public String label() {
        return label;
    }

    /** What is measured against the angle. */
    public String ordinate() {
        return ordinate;
    }
}
