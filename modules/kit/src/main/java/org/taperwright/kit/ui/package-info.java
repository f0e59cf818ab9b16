/**
 * The kit's panels in plain Swing. In: the library's kits and catalogue, and what a person logs. Out: edits by name, lists
 * and a card. Holds no class of the platform.
 */
@NullMarked
package org.taperwright.kit.ui;

import org.jspecify.annotations.NullMarked;
