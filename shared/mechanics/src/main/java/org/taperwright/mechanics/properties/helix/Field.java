package org.taperwright.mechanics.properties.helix;

import org.taperwright.mechanics.properties.solve.Rows;

/**
 * A vector of complex numbers, or of real ones, which then carries no imaginary part.
 *
 * @param re real parts
 * @param im imaginary parts; empty when all are zero
 */
record Field(double[] re, double[] im) {
    /** Zeros. */
    static Field zero(int size, boolean complex) {
        return new Field(new double[size], new double[complex ? size : 0]);
    }

    /** A real vector. */
    static Field real(double... values) {
        return new Field(values, new double[0]);
    }

    boolean complex() {
        return im.length > 0;
    }

    int size() {
        return re.length;
    }

    double im(int i) {
        return complex() ? im[i] : 0;
    }

    Field copy() {
        return new Field(re.clone(), im.clone());
    }

    /** Adds another vector times a complex number; a real vector ignores what would make it complex. */
    void add(double factorRe, double factorIm, Field other) {
        Rows.add(factorRe, other.re, re, 0, re.length);
        if (complex()) {
            Rows.add(factorIm, other.re, im, 0, im.length);
            if (other.complex()) {
                Rows.add(-factorIm, other.im, re, 0, re.length);
                Rows.add(factorRe, other.im, im, 0, im.length);
            }
        }
    }

    /** Multiplies by a real number. */
    void scale(double factor) {
        for (int i = 0; i < re.length; i++) {
            re[i] *= factor;
        }
        for (int i = 0; i < im.length; i++) {
            im[i] *= factor;
        }
    }

    /** Real part of {@code this^H other}. */
    double dotRe(Field other) {
        double sum = Rows.dot(re, other.re, 0, re.length);
        return complex() && other.complex() ? sum + Rows.dot(im, other.im, 0, im.length) : sum;
    }

    /** Imaginary part of {@code this^H other}. */
    double dotIm(Field other) {
        double sum = other.complex() ? Rows.dot(re, other.im, 0, re.length) : 0;
        return complex() ? sum - Rows.dot(im, other.re, 0, im.length) : sum;
    }
}
