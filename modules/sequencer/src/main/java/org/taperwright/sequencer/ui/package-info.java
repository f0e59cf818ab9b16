/**
 * The sequencer's panels in plain Swing. In: a {@link org.taperwright.workbench.api.Desk}. Out: edits and selections on it.
 */
@NullMarked
package org.taperwright.sequencer.ui;

import org.jspecify.annotations.NullMarked;
