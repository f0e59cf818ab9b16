package org.taperwright.mechanics.alloy;

import java.util.List;

/**
 * Plug-in point: a kind of stress-strain curve. Register an implementation by a service line; an alloy names its law and
 * gives the constants that the law declares.
 */
public interface StressLaw {
    /** Identifier in the JSON form. */
    String id();

    /** Name for people, sentence case. */
    String label();

    /** One sentence on what the law says, with its validity. */
    String explanation();

    /** The constants it needs besides Young's modulus, yield and strength. */
    List<LawConstant> constants();

    /** Whether the strain beyond the elastic range is given back on unloading. */
    boolean springsBack();

    /** Stress against strain of an alloy of this law. */
    StressCurve tension(Alloy alloy);

    /** Shear stress against shear strain of an alloy of this law. */
    StressCurve shear(Alloy alloy);
}
