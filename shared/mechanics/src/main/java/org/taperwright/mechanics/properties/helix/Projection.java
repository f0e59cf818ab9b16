package org.taperwright.mechanics.properties.helix;

import java.util.ArrayList;
import java.util.List;

/** A few displacements of a screw, orthogonal in energy, and the screw's equations on them alone (Galerkin). */
final class Projection {
    /** Share of a displacement's energy norm that must be left when those before it are taken out. */
    private static final double NEW = 1e-7;

    private final Screw screw;
    private final List<Screw.Image> images = new ArrayList<>();

    /**
     * Projects a screw.
     *
     * @param displacements with what the pencil makes of them; taken over and changed
     */
    Projection(Screw screw, List<Screw.Image> displacements) {
        this.screw = screw;
        displacements.forEach(this::addImage);
    }

    /** Takes out of a displacement what those before it hold (Gram and Schmidt, in energy), and keeps the rest. */
    private void addImage(Screw.Image fresh) {
        double before = norm(fresh);
        for (Screw.Image known : images) {
            double re = known.vector().dotRe(fresh.value());
            double im = known.vector().dotIm(fresh.value());
            fresh.vector().add(-re, -im, known.vector());
            fresh.value().add(-re, -im, known.value());
            fresh.slope().add(-re, -im, known.slope());
            fresh.bend().add(-re, -im, known.bend());
        }
        double left = norm(fresh);
        if (left > NEW * before) {
            for (Field part : List.of(fresh.vector(), fresh.value(), fresh.slope(), fresh.bend())) {
                part.scale(1 / left);
            }
            images.add(fresh);
        }
    }

    private static double norm(Screw.Image image) {
        return Math.sqrt(Math.max(0, image.vector().dotRe(image.value())));
    }

    /** The displacements, to be multiplied by the shares of a {@link ReducedScrew.State}. */
    List<Field> displacements() {
        return images.stream().map(Screw.Image::vector).toList();
    }

    /** The equations on the displacements. */
    ReducedScrew reduced(double twist) {
        List<Field> loads = new ArrayList<>();
        List<Field> slopes = new ArrayList<>();
        for (int j = 0; j < Screw.MACROS; j++) {
            loads.add(screw.load(j));
            slopes.add(screw.loadSlope(j));
        }
        return new ReducedScrew(
                twist,
                screw.macro(),
                projected(images.stream().map(Screw.Image::value).toList()),
                projected(images.stream().map(Screw.Image::slope).toList()),
                projected(images.stream().map(Screw.Image::bend).toList()),
                projected(loads),
                projected(slopes));
    }

    private Field[] projected(List<Field> columns) {
        Field[] result = new Field[columns.size()];
        for (int j = 0; j < result.length; j++) {
            result[j] = Field.zero(images.size(), screw.complex());
            for (int i = 0; i < images.size(); i++) {
                Field vector = images.get(i).vector();
                result[j].re()[i] = vector.dotRe(columns.get(j));
                if (screw.complex()) {
                    result[j].im()[i] = vector.dotIm(columns.get(j));
                }
            }
        }
        return result;
    }
}
