package org.taperwright.mechanics.comparison;

/** Groups of comparison rows, in the order shown. */
public enum MetricGroup {
    FLEXIBILITY("Flexibility"),
    CUTTING("Cutting"),
    TORSION("Torsion"),
    FATIGUE("Fatigue"),
    GUIDANCE("Guidance");

    private final String label;

    MetricGroup(String label) {
        this.label = label;
    }

    /** Heading for people. */
    public String label() {
        return label;
    }
}
