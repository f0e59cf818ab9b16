package org.taperwright.shaping.passage.spread;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Fracture;
import org.taperwright.mechanics.fatigue.Fatigue;
import org.taperwright.mechanics.fatigue.StrainLife;
import org.taperwright.mechanics.fatigue.StrainLives;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.uncertainty.Spread;
import org.taperwright.mechanics.uncertainty.UncertainConstant;
import org.taperwright.shaping.passage.stroke.WorkingInstrument;

/**
 * The uncertain constants of an alloy, and an instrument of it with other values of them. Young's modulus makes the whole rod stiffer
 * or softer, its plateau with it; the shear strength scales the torque that it bears; the law of life is drawn as in the tube test.
 * The scatter between like pieces is not in it.
 */
final class AlloyInputs {
    private static final List<String> LIFE = List.of(
            "life at 3 % strain",
            "exponent of the strain-life law",
            "endurance strain",
            "strain borne beyond plain wire",
            "lives gained over plain wire");
    private static final List<String> LIFE_UNITS = List.of("turns", "", "", "", "");

    private final UncertainConstant young;
    private final UncertainConstant shear;
    private final StrainLife life;
    private final List<String> lifeNames;
    private final List<UncertainInput> inputs = new ArrayList<>();

    AlloyInputs(Alloy alloy) {
        String name = alloy.id();
        young = new UncertainConstant(name + ".youngMpa", alloy.youngMpa(), Optional.of(alloy.youngBand()));
        String strength = Fracture.SHEAR_STRENGTH.name();
        shear = new UncertainConstant(
                name + "." + strength,
                alloy.constant(strength),
                Optional.ofNullable(alloy.constants().get(strength)).flatMap(Reading::band));
        life = StrainLives.of(alloy);
        lifeNames = Fatigue.names(alloy).subList(0, StrainLife.CONSTANTS);
        inputs.add(new UncertainInput(
                young.name(), "Young's modulus of " + alloy.label(), "MPa", young::at, "the alloy's band"));
        if (shear.band().isPresent()) {
            inputs.add(new UncertainInput(
                    shear.name(), "shear strength of " + alloy.label(), "MPa", shear::at, "the alloy's band"));
        }
        String wire = alloy.superelastic() ? ", nickel-titanium" : ", steel";
        for (int i = 0; i < StrainLife.CONSTANTS; i++) {
            Spread spread = life.spreads().get(i);
            if (spread.low() < spread.high()) {
                inputs.add(new UncertainInput(
                        lifeNames.get(i), LIFE.get(i) + wire, LIFE_UNITS.get(i), spread::at, life.source()));
            }
        }
    }

    List<UncertainInput> inputs() {
        return inputs;
    }

    /** An instrument of the alloy at shares of the spreads by name; a constant without a share stays in the middle. */
    WorkingInstrument at(WorkingInstrument usual, Map<String, Double> shares) {
        double stiffer = young.at(share(young.name(), shares)) / young.value();
        double stronger = shear.at(share(shear.name(), shares)) / shear.value();
        double[] drawn =
                lifeNames.stream().mapToDouble(name -> share(name, shares)).toArray();
        return new WorkingInstrument(
                usual.rod().stiffer(stiffer),
                level -> stronger * usual.strengthNmm().applyAsDouble(level),
                strain -> life.cycles(strain, drawn),
                usual.edgesAt(),
                usual.roomMm2At(),
                usual.wearShare(),
                usual.energyShare());
    }

    private static double share(String name, Map<String, Double> shares) {
        return shares.getOrDefault(name, 0.5);
    }
}
