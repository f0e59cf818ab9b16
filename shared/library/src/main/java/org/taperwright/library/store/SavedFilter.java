package org.taperwright.library.store;

/**
 * A filter as kept.
 *
 * @param name what people call it
 * @param filter which instruments it finds
 * @param note free text
 */
public record SavedFilter(String name, InstrumentFilter filter, String note) {}
