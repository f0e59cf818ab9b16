package org.taperwright.library.store;

/**
 * A thing changed by two programs: the later change was not stored.
 *
 * @param mine the change that was not stored
 * @param theirs the revision stored meanwhile
 */
public record Clash(Draft mine, Revision theirs) {}
