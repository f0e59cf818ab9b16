/**
 * A thing's past. In: the steps the library keeps. Out: what each changed, by whom and when, and one brought back as an edit.
 * Holds no class of the platform.
 */
@NullMarked
package org.taperwright.catalogue.ui.past;

import org.jspecify.annotations.NullMarked;
