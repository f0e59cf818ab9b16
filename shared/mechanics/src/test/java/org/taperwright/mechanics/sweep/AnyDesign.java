package org.taperwright.mechanics.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.FluteStation;
import org.taperwright.mechanics.design.IsoSizes;
import org.taperwright.mechanics.design.Making;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.design.Tip;
import org.taperwright.mechanics.design.TipKind;
import org.taperwright.mechanics.section.Hand;

/**
 * A design drawn from the whole space that the checks let through, its corners oftener than its middle: thin and thick
 * tips, tapers of both signs up to the steepest, one to three sections of any kind, straight blades to twenty flutes per
 * mm. The seed gives the same design again.
 *
 * @param seed of the generator
 * @param design what was drawn
 */
record AnyDesign(long seed, Design design) {
    private static final double THINNEST_MM = 0.0501;
    private static final double THICKEST_MM = 2.35;
    private static final double STEEPEST = 0.5;

    static AnyDesign of(long seed) {
        Random random = new Random(seed);
        double length = random.nextInt(3) == 0
                ? 2 + 58 * random.nextDouble()
                : IsoSizes.lengthsMm().get(random.nextInt(4));
        double working = Math.min(length, random.nextBoolean() ? 16 : 1 + 30 * random.nextDouble());
        double tip = random.nextBoolean()
                ? IsoSizes.sizes().get(random.nextInt(IsoSizes.sizes().size())) / 100.0
                : diameter(random);
        Design design = new Design(
                "any",
                "",
                tip,
                taper(random, tip, working),
                random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(diameter(random)),
                length,
                sections(random, working),
                flutes(random, working),
                Hand.values()[random.nextInt(Hand.values().length)],
                new Tip(TipKind.values()[random.nextInt(TipKind.values().length)], corner(random, 40, 170)),
                Alloys.all().get(random.nextInt(Alloys.all().size())).id(),
                Making.values()[random.nextInt(Making.values().length)],
                Motion.values()[random.nextInt(Motion.values().length)]);
        return new AnyDesign(seed, design);
    }

    /** Evenly between two ends, every fourth time at one of them. */
    static double corner(Random random, double low, double high) {
        return switch (random.nextInt(8)) {
            case 0 -> low;
            case 1 -> high;
            default -> low + (high - low) * random.nextDouble();
        };
    }

    private static double diameter(Random random) {
        return THINNEST_MM * Math.pow(THICKEST_MM / THINNEST_MM, corner(random, 0, 1));
    }

    /** Mostly one taper; otherwise up to six segments towards diameters of any size, as steep as the checks allow. */
    private static List<TaperSegment> taper(Random random, double tip, double working) {
        int count = random.nextInt(2) == 0 ? 1 : 1 + random.nextInt(6);
        boolean usual = random.nextBoolean();
        List<TaperSegment> segments = new ArrayList<>();
        double d = tip;
        double from = 0;
        for (int i = 0; i < count; i++) {
            double to = i + 1 == count ? working : from + (working - from) * corner(random, 0.002, 0.9);
            double wanted = usual ? d + (to - from) * 0.12 * random.nextDouble() : diameter(random);
            double end = Math.max(THINNEST_MM, Math.min(THICKEST_MM - 1e-9, wanted));
            double slope = Math.max(-STEEPEST, Math.min(STEEPEST, (end - d) / (to - from)));
            segments.add(new TaperSegment(from, to, slope));
            d += slope * (to - from);
            from = to;
        }
        return segments;
    }

    private static List<SectionStation> sections(Random random, double working) {
        int count = random.nextInt(3) == 0 ? 2 + random.nextInt(2) : 1;
        List<SectionStation> stations = new ArrayList<>();
        double level = 0;
        for (int i = 0; i < count; i++) {
            stations.add(new SectionStation(level, AnySection.of(random)));
            level += (working - level) * corner(random, 0.01, 1);
        }
        return distinct(stations);
    }

    private static List<SectionStation> distinct(List<SectionStation> stations) {
        List<SectionStation> rising = new ArrayList<>();
        for (SectionStation station : stations) {
            if (rising.isEmpty()
                    || station.levelMm() > rising.get(rising.size() - 1).levelMm()) {
                rising.add(station);
            }
        }
        return rising;
    }

    private static List<FluteStation> flutes(Random random, double working) {
        List<FluteStation> stations = new ArrayList<>();
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            double perMm = switch (random.nextInt(6)) {
                case 0 -> 0;
                case 1 -> 20;
                default -> 0.02 * Math.pow(250, random.nextDouble());
            };
            stations.add(new FluteStation(working * i / count, perMm));
        }
        return stations;
    }

    @Override
    public String toString() {
        String families = String.join(
                ", ",
                design.sections().stream()
                        .map(station -> AnySection.text(station.shape()))
                        .toList());
        return "design of seed " + seed + "L (" + families + ", " + design.alloy() + ", tip " + design.tipDiameterMm()
                + ")";
    }
}
