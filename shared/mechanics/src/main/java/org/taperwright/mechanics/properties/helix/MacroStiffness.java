package org.taperwright.mechanics.properties.helix;

import java.util.List;
import org.taperwright.mechanics.properties.solve.EnvelopeCholesky;

/**
 * The energy of the four macroscopic strains with the displacement relaxed: {@code m^H A m}, A Hermitian.
 *
 * @param columns A by columns
 */
record MacroStiffness(Field[] columns) {
    /** {@code E - F^H G} with the strains' own stiffness E, their loads F and the displacements {@code -G} they cause. */
    static MacroStiffness relaxed(double[][] own, Field[] load, Field[] answer) {
        boolean complex = load[0].complex();
        Field[] columns = new Field[Screw.MACROS];
        for (int j = 0; j < Screw.MACROS; j++) {
            columns[j] = Field.zero(Screw.MACROS, complex);
            for (int i = 0; i < Screw.MACROS; i++) {
                columns[j].re()[i] = own[i][j] - load[i].dotRe(answer[j]);
                if (complex) {
                    columns[j].im()[i] = -load[i].dotIm(answer[j]);
                }
            }
        }
        return new MacroStiffness(columns);
    }

    /** A times a strain. */
    Field times(Field strain) {
        return combine(columns, strain);
    }

    /** Columns times a strain. */
    static Field combine(Field[] columns, Field strain) {
        Field sum = Field.zero(columns[0].size(), columns[0].complex());
        for (int j = 0; j < columns.length; j++) {
            sum.add(strain.re()[j], strain.im(j), columns[j]);
        }
        return sum;
    }

    /** The strain with its free part such that the energy is least. */
    Field leastEnergy(Field prescribed, List<Field> free) {
        Field pull = times(prescribed);
        pull.scale(-1);
        Field strain = Field.zero(Screw.MACROS, columns[0].complex());
        strain.add(1, 0, prescribed);
        strain.add(1, 0, yielding(pull, free));
        return strain;
    }

    /** The free strain m that a generalised force f causes: {@code T^H A T c = T^H f}, {@code m = T c}. */
    Field yielding(Field force, List<Field> free) {
        boolean complex = columns[0].complex();
        Field strain = Field.zero(Screw.MACROS, complex);
        int n = free.size();
        if (n == 0) {
            return strain;
        }
        EnvelopeCholesky matrix = EnvelopeCholesky.full(n, complex);
        Field c = Field.zero(n, complex);
        for (int j = 0; j < n; j++) {
            Field column = times(free.get(j));
            for (int i = j; i < n; i++) {
                matrix.add(i, j, free.get(i).dotRe(column), free.get(i).dotIm(column));
            }
            c.re()[j] = free.get(j).dotRe(force);
            if (complex) {
                c.im()[j] = free.get(j).dotIm(force);
            }
        }
        if (!matrix.factorise()) {
            return strain;
        }
        matrix.solve(c.re(), c.im());
        for (int j = 0; j < n; j++) {
            strain.add(c.re()[j], c.im(j), free.get(j));
        }
        return strain;
    }
}
