package org.taperwright.mechanics.design;

/** A stretch of constant taper: from and to in mm from the tip, taper in mm per mm (0.04 is a 4 % taper). */
public record TaperSegment(double fromMm, double toMm, double taper) {}
