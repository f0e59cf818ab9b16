package org.taperwright.shaping.passage.stroke;

import java.util.List;
import java.util.Map;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Fracture;
import org.taperwright.mechanics.cutting.CuttingGeometries;
import org.taperwright.mechanics.cutting.CuttingResult;
import org.taperwright.mechanics.cutting.CuttingTest;
import org.taperwright.mechanics.cutting.Dentine;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.fatigue.StrainLife;
import org.taperwright.mechanics.fatigue.StrainLives;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.shaping.placement.rod.Rod;
import org.taperwright.shaping.placement.rod.Rods;

/**
 * What the engine asks of an instrument, from its design: its rod, the fully plastic torque of its sections at
 * the alloy's shear strength, at which it breaks, its alloy's
 * strain-life law, its edges, room for chips, and how it cuts. The wear coefficient and the energy of cutting are taken to be those
 * of a plain triangular blade of the same size, flutes and motion; another blade's differ by the ratio of the two in the cutting
 * test, where lands share the pressure and rake sets the energy. That ratio is an index, held between a fifth and five.
 */
public final class WorkingInstruments {
    private static final double MOST_SHARE = 5;

    private WorkingInstruments() {}

    /** The instrument of a design that has no impossible fault, moved in a way. */
    public static WorkingInstrument of(Design design, Alloy alloy, Motion motion) {
        BladeSections sections = BladeSections.of(design);
        Rod rod = Rods.of(design, alloy);
        StrainLife life = StrainLives.of(alloy);
        CuttingResult own = cutting(design, motion);
        CuttingResult plain = cutting(withTriangle(design), motion);
        double shear = alloy.constant(Fracture.SHEAR_STRENGTH.name());
        return new WorkingInstrument(
                rod,
                level -> sections.at(level).plasticTorque() * shear * Math.pow(rod.diameterMm(level), 3),
                life::cycles,
                sections::edgesAt,
                level -> sections.at(level).chipSpace() * Math.pow(rod.diameterMm(level), 2),
                share(own.perPassMm3(), plain.perPassMm3()),
                share(plain.perJouleMm3(), own.perJouleMm3()));
    }

    /** Volume of loose chips over that of the dentine they come from. */
    static double loosening() {
        return Dentine.usual().loosening();
    }

    private static CuttingResult cutting(Design design, Motion motion) {
        return CuttingTest.run(CuttingGeometries.of(design, BladeSections.of(design)), motion);
    }

    private static double share(double own, double plain) {
        if (!(own > 0)) {
            return 1 / MOST_SHARE;
        }
        return plain > 0 ? Math.max(1 / MOST_SHARE, Math.min(MOST_SHARE, own / plain)) : MOST_SHARE;
    }

    private static Design withTriangle(Design design) {
        return new Design(
                design.name(),
                design.note(),
                design.tipDiameterMm(),
                design.taper(),
                design.shaftDiameterMm(),
                design.lengthMm(),
                List.of(new SectionStation(0, SectionShape.of("triangle", Map.of()))),
                design.flutes(),
                design.hand(),
                design.tip(),
                design.alloy(),
                design.making(),
                design.motion());
    }
}
