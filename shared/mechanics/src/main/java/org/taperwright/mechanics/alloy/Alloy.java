package org.taperwright.mechanics.alloy;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;

/**
 * An alloy: elastic constants and strengths, and the stress law that it follows beyond the elastic range.
 *
 * @param id identifier in the JSON form
 * @param label name for people
 * @param youngMpa Young's modulus, MPa
 * @param youngBand 5 to 95 % of Young's modulus, MPa
 * @param poisson Poisson's ratio
 * @param yieldMpa tensile yield or plateau stress, MPa
 * @param yieldBand 5 to 95 % of it, MPa
 * @param ultimateMpa tensile strength, MPa
 * @param law identifier of its {@link StressLaw}
 * @param constants what that law needs, by name, each with its 5 to 95 % band
 * @param superelastic whether it is a nickel-titanium alloy (twisting the blank is then unusual)
 * @param source where the numbers come from and how they are known
 * @param validity where they hold
 * @param kin identifier of the shipped alloy whose kind it is, its own where it is that one; the strain-life law goes by it
 * @param life constants of the strain-life law that differ from its kin's, by name, each with its 5 to 95 % band
 */
public record Alloy(
        String id,
        String label,
        double youngMpa,
        Band youngBand,
        double poisson,
        double yieldMpa,
        Band yieldBand,
        double ultimateMpa,
        String law,
        Map<String, Reading> constants,
        boolean superelastic,
        String source,
        String validity,
        String kin,
        Map<String, Reading> life) {
    public Alloy {
        constants = Collections.unmodifiableMap(new TreeMap<>(constants));
        life = Collections.unmodifiableMap(new TreeMap<>(life));
    }

    /** One that is its own kin. */
    public Alloy(
            String id,
            String label,
            double youngMpa,
            Band youngBand,
            double poisson,
            double yieldMpa,
            Band yieldBand,
            double ultimateMpa,
            String law,
            Map<String, Reading> constants,
            boolean superelastic,
            String source,
            String validity) {
        this(
                id,
                label,
                youngMpa,
                youngBand,
                poisson,
                yieldMpa,
                yieldBand,
                ultimateMpa,
                law,
                constants,
                superelastic,
                source,
                validity,
                id,
                Map.of());
    }

    /** The same alloy with other constants of its strain-life law. */
    public Alloy withLife(Map<String, Reading> otherLife) {
        return new Alloy(
                id,
                label,
                youngMpa,
                youngBand,
                poisson,
                yieldMpa,
                yieldBand,
                ultimateMpa,
                law,
                constants,
                superelastic,
                source,
                validity,
                kin,
                otherLife);
    }

    /** A constant of the law. */
    public double constant(String name) {
        Reading constant = constants.get(name);
        if (constant == null) {
            throw new IllegalArgumentException("alloy " + id + " gives no " + name);
        }
        return constant.value();
    }

    /** Stress against strain. */
    public StressCurve tension() {
        return stressLaw().tension(this);
    }

    /** Shear stress against shear strain. */
    public StressCurve shear() {
        return stressLaw().shear(this);
    }

    /** Whether it returns to its shape when unloaded, rather than keep what went beyond its elastic range. */
    public boolean springsBack() {
        return stressLaw().springsBack();
    }

    private StressLaw stressLaw() {
        return StressLaws.find(law)
                .orElseThrow(() -> new IllegalArgumentException("alloy " + id + " names no known law: " + law));
    }

    /** Shear modulus {@code E / (2 (1 + nu))}, MPa. */
    public double shearModulusMpa() {
        return youngMpa / (2 * (1 + poisson));
    }

    /** Shear yield by von Mises, {@code Y / sqrt 3}, MPa. */
    public double shearYieldMpa() {
        return yieldMpa / Math.sqrt(3);
    }
}
