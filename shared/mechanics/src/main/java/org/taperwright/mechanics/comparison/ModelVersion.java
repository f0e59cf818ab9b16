package org.taperwright.mechanics.comparison;

/** The version of the model: of everything that makes a number of a design. */
public final class ModelVersion {
    /** Raised with every change that moves a number; results kept with another version may differ now. */
    public static final String CURRENT = "3";

    private ModelVersion() {}
}
