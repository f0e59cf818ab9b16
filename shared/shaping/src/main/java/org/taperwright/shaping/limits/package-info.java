/**
 * What the engine leaves out, as it stands on the page LIMITS.md. In: that page. Out: its sections, to be shown beside results.
 */
@NullMarked
package org.taperwright.shaping.limits;

import org.jspecify.annotations.NullMarked;
