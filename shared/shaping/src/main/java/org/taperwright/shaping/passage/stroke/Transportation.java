package org.taperwright.shaping.passage.stroke;

import java.util.Optional;

/**
 * How evenly a canal was widened at a level, in the plane of the bend. The sign holds, and the order by alloy and curvature; the
 * size is an index. Measures of Gambill and others, J Endod 1996;22:369 (from memory).
 *
 * @param fromEndMm distance from where instrumentation ends, mm
 * @param transportedMm widening towards the inside of the bend less that towards the outside, mm
 * @param centring smaller over larger widening, 1 when even; empty where nothing was widened
 * @param centroidMm how far the section's centroid moved towards the inside of the bend, mm
 */
public record Transportation(double fromEndMm, double transportedMm, Optional<Double> centring, double centroidMm) {}
