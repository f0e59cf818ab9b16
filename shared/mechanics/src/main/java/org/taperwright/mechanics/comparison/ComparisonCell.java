package org.taperwright.mechanics.comparison;

import java.util.Optional;
import java.util.OptionalDouble;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;

/**
 * A value and its ratio to the datum's.
 *
 * @param reading the value with its band
 * @param ratio absent where either value is below zero, the datum's is zero, or may be too often for a band
 * @param ratioBand 5 to 95 % of the ratio of an estimate or index, sample by sample: what both designs share cancels
 * @param difference the value less the datum's, with its band likewise: for where a ratio says nothing
 */
public record ComparisonCell(Reading reading, OptionalDouble ratio, Optional<Band> ratioBand, Reading difference) {}
