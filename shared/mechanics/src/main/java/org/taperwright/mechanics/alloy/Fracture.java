package org.taperwright.mechanics.alloy;

/** Constants of fracture in twisting, which every law declares. */
public final class Fracture {
    /** Shear stress that the alloy does not exceed. */
    public static final LawConstant SHEAR_STRENGTH = new LawConstant(
            "shearStrengthMpa", "Shear strength", "MPa", "Greatest shear stress in twisting to fracture.");

    /** Shear strain at which it breaks. */
    public static final LawConstant SHEAR_STRAIN = new LawConstant(
            "fractureShearStrain", "Shear strain at fracture", "", "Shear strain at which twisting breaks it.");

    private Fracture() {}
}
