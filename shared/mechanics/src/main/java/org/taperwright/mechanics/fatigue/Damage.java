package org.taperwright.mechanics.fatigue;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.quantity.Reading;

/**
 * The share of a level's life that its past has spent, by Miner's sum {@code D = sum n_i / N(eps_i)}; 1 stands for
 * fracture. The same constants hold for all of a history, so each sample of the band is one instrument. Validity: the
 * order of strains does not matter (Palmgren 1924, Miner 1945: true within a factor of about two of most metals), and what
 * the strain-life law says of the strains. An estimate; never to be read as what is left.
 */
public final class Damage {
    private Damage() {}

    /** The share spent, with its band. */
    public static Reading spent(List<Exposure> history, Alloy alloy) {
        StrainLife law = StrainLives.of(alloy);
        double middle = sum(history, exposure -> Fatigue.life(law, exposure.strain(), exposure.motion()));
        return Fatigue.sampled(
                        alloy,
                        middle,
                        shares -> sum(
                                history, exposure -> Fatigue.life(law, exposure.strain(), exposure.motion(), shares)))
                .reading();
    }

    private static double sum(List<Exposure> history, ToDoubleFunction<Exposure> life) {
        return history.stream()
                .mapToDouble(exposure -> exposure.cycles() / life.applyAsDouble(exposure))
                .sum();
    }
}
