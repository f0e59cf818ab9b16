/**
 * Canals as they are on average, by tooth and root, and how far they spread. In: published averages. Out: a canal, or a population of
 * canals. Sources: named by each preset, with how they are known.
 */
@NullMarked
package org.taperwright.shaping.canal.preset;

import org.jspecify.annotations.NullMarked;
