/**
 * Results as people read them and as programs do. In: assessments, comparisons, passages. Out: text, JSON.
 */
@NullMarked
package org.taperwright.command.print;

import org.jspecify.annotations.NullMarked;
