package org.taperwright.mechanics.alloy;

import java.util.List;

/**
 * Nickel-titanium that is martensite at the working temperature: its variants reorient along a low plateau, and the strain
 * stays until it is heated; curve of {@link Plateau}. Validity: monotonic loading at room or body temperature. Source: wire
 * tests of heat-treated alloys, J Endod 2012;38:1535 (not superelastic at 23 and 37 °C; abstract read).
 */
public final class Reorienting implements StressLaw {
    @Override
    public String id() {
        return "reorienting";
    }

    @Override
    public String label() {
        return "Martensitic, with a plateau";
    }

    @Override
    public String explanation() {
        return "Elastic up to a low plateau of reorienting martensite, along it up to a strain, then elastic; what goes beyond the "
                + "elastic range stays until it is heated.";
    }

    @Override
    public List<LawConstant> constants() {
        return Plateau.CONSTANTS;
    }

    @Override
    public boolean springsBack() {
        return false;
    }

    @Override
    public StressCurve tension(Alloy alloy) {
        return Plateau.tension(alloy);
    }

    @Override
    public StressCurve shear(Alloy alloy) {
        return Plateau.shear(alloy);
    }
}
