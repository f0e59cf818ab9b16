package org.taperwright.mechanics.design;

import java.util.List;
import java.util.OptionalDouble;
import org.taperwright.mechanics.section.Hand;

/**
 * The geometry and material of an instrument: its working part from the tip (x = 0) and the shaft beyond.
 *
 * @param name what people call it
 * @param note free text
 * @param tipDiameterMm projected diameter d0 at the tip, mm; size N means N/100 mm
 * @param taper contiguous segments covering 0 to the length of the working part
 * @param shaftDiameterMm diameter beyond the working part; when absent, the diameter where the working part ends
 * @param lengthMm length from the tip to the handle (21, 25, 28, 31 by the standard)
 * @param sections at least one station, by rising level
 * @param flutes at least one station, by rising level
 * @param hand turning sense in which the edges lead
 * @param tip the tip
 * @param alloy identifier of the alloy
 * @param making how the flutes are made
 * @param motion the motion it is meant for
 */
public record Design(
        String name,
        String note,
        double tipDiameterMm,
        List<TaperSegment> taper,
        OptionalDouble shaftDiameterMm,
        double lengthMm,
        List<SectionStation> sections,
        List<FluteStation> flutes,
        Hand hand,
        Tip tip,
        String alloy,
        Making making,
        Motion motion) {

    public Design {
        taper = List.copyOf(taper);
        sections = List.copyOf(sections);
        flutes = List.copyOf(flutes);
    }

    /** Length of the working part, mm: where the last taper segment ends. */
    public double workingPartMm() {
        return taper.isEmpty() ? 0 : taper.get(taper.size() - 1).toMm();
    }

    /**
     * Diameter at a level, mm: {@code d0 + integral of taper} within the working part, the shaft's beyond it.
     */
    public double diameterMm(double levelMm) {
        if (levelMm > workingPartMm() && shaftDiameterMm.isPresent()) {
            return shaftDiameterMm.getAsDouble();
        }
        return bladeDiameterMm(levelMm);
    }

    /** Diameter of the working part, held constant beyond both its ends, mm. */
    private double bladeDiameterMm(double levelMm) {
        double d = tipDiameterMm;
        for (TaperSegment segment : taper) {
            double reach = Math.min(levelMm, segment.toMm()) - segment.fromMm();
            if (reach <= 0) {
                break;
            }
            d += segment.taper() * reach;
        }
        return d;
    }

    /** Flutes per mm at a level: linear between stations, constant beyond the first and last. */
    public double flutesPerMm(double levelMm) {
        FluteStation below = flutes.get(0);
        for (FluteStation above : flutes) {
            if (levelMm <= above.levelMm()) {
                double span = above.levelMm() - below.levelMm();
                double share = span <= 0 ? 1 : (levelMm - below.levelMm()) / span;
                return below.flutesPerMm() + Math.max(0, share) * (above.flutesPerMm() - below.flutesPerMm());
            }
            below = above;
        }
        return below.flutesPerMm();
    }
}
