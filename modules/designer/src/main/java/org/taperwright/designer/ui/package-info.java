/**
 * The designer's panels in plain Swing. In: a {@link org.taperwright.workbench.api.Desk}. Out: edits and selections on it.
 */
@NullMarked
package org.taperwright.designer.ui;

import org.jspecify.annotations.NullMarked;
