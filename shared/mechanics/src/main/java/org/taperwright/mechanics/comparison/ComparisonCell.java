package org.taperwright.mechanics.comparison;

import java.util.OptionalDouble;
import org.taperwright.mechanics.quantity.Reading;

/** A value and its ratio to the datum's, absent where either is below zero or the datum's is zero. */
public record ComparisonCell(Reading reading, OptionalDouble ratio) {}
