package org.taperwright.validation.polynomial;

import org.jspecify.annotations.Nullable;

/**
 * One displacement or imposed strain as its strains at the radial points. The kinds of strain are, with Z = x + iy:
 * {@code S = exx + eyy}, {@code E = ezz}, {@code P± = exx - eyy ± i gxy}, {@code G± = (gxz ± i gyz) / i}; for a field of
 * angular order J they go round as {@code exp(i m theta)} with m = J, J, J ± 2, J ± 1, so that a product of two fields
 * goes round with the difference of their orders whatever the strain.
 *
 * @param order J
 * @param strains by kind {@code S, E, P+, P-, G+, G-}; null where it vanishes
 * @param powers of the twist that each is multiplied by
 */
record Field(int order, double @Nullable [][] strains, int[] powers) {
    static final int S = 0;
    static final int E = 1;
    static final int P_PLUS = 2;
    static final int P_MINUS = 3;
    static final int G_PLUS = 4;
    static final int G_MINUS = 5;
    static final int KINDS = 6;
}
