/**
 * Adapters between the workbench and the NetBeans Platform: windows, undo, progress, theme, cautions, failures.
 * In: the platform's events. Out: calls on the {@link org.taperwright.workbench.api.Desk} and what it shows.
 */
@NullMarked
package org.taperwright.workbench.platform;

import org.jspecify.annotations.NullMarked;
