package org.taperwright.mechanics.bench;

/**
 * The standard's limit for a test, where the size has one.
 *
 * @param valueNmm limit, N mm
 * @param upper true when results must not exceed it, false when they must reach it
 * @param source standard and table, and how the value is known
 */
public record StandardLimit(double valueNmm, boolean upper, String source) {}
