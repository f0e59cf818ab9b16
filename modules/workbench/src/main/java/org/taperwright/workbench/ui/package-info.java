/**
 * Plain Swing parts that every window shares. In: values and a {@link org.taperwright.workbench.api.Desk}. Out: edits.
 * Holds no class of the platform, so each part opens in a bare frame.
 */
@NullMarked
package org.taperwright.workbench.ui;

import org.jspecify.annotations.NullMarked;
