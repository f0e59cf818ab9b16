/**
 * The root canal: centreline, openings by level, working length. In: what a person enters or a preset. Out: records.
 */
@NullMarked
package org.taperwright.shaping.canal;

import org.jspecify.annotations.NullMarked;
