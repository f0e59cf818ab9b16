package org.taperwright.mechanics.alloy;

import java.util.List;

/**
 * Nickel-titanium whose parent phase turns into martensite under load and back when unloaded; curve of {@link Plateau}.
 * Validity: monotonic loading at one temperature; unloading runs lower, which does not enter here. Source: the trilinear
 * curve of published finite-element studies of instruments.
 */
public final class Superelastic implements StressLaw {
    @Override
    public String id() {
        return "superelastic";
    }

    @Override
    public String label() {
        return "Superelastic, with a plateau";
    }

    @Override
    public String explanation() {
        return "Elastic up to a plateau, along it up to a strain, then elastic in martensite; springs back when unloaded, and "
                + "compression reaches its plateau later than tension.";
    }

    @Override
    public List<LawConstant> constants() {
        return Plateau.CONSTANTS;
    }

    @Override
    public boolean springsBack() {
        return true;
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
