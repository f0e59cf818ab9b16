package org.taperwright.mechanics.section.families;

import java.util.List;
import org.taperwright.mechanics.section.FamilyParameter;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.SectionFamily;
import org.taperwright.mechanics.section.SectionShape;

/**
 * Rectangle of long side w along x and short side r w along y, its centre shifted by e along x; w follows from the two
 * far corners standing on the circle: {@code (e + w/2)^2 + (r w/2)^2 = 1/4}.
 */
public final class OffsetRectangle implements SectionFamily {
    @Override
    public String id() {
        return "offset-rectangle";
    }

    @Override
    public String label() {
        return "Offset rectangle";
    }

    @Override
    public String explanation() {
        return "A rectangle whose centre stands off the axis, so that two corners cut and the blade swaggers.";
    }

    @Override
    public List<FamilyParameter> parameters() {
        return List.of(
                new FamilyParameter(
                        "sideRatio", "Side ratio", "", 0.2, 1, 0.6, 0.01, false, "Short side over long side."),
                new FamilyParameter(
                        "offset",
                        "Offset",
                        "d",
                        0,
                        0.15,
                        0.05,
                        0.005,
                        false,
                        "Distance of the rectangle's centre from the instrument's axis, along the long side."));
    }

    @Override
    public OutlineResult outline(SectionShape shape) {
        double ratio = value(shape, "sideRatio");
        double offset = value(shape, "offset");
        double square = 1 + ratio * ratio;
        double half = (Math.sqrt(offset * offset + square * (0.25 - offset * offset)) - offset) / square;
        double high = ratio * half;
        return Drawings.polygon(
                List.of(
                        new Point(offset + half, -high),
                        new Point(offset + half, high),
                        new Point(offset - half, high),
                        new Point(offset - half, -high)),
                0);
    }
}
