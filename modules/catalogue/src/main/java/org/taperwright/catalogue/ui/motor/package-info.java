/**
 * Motors: entry, and which instruments one can drive. In: motors and instruments of the library. Out: edits by name. Holds no
 * class of the platform.
 */
@NullMarked
package org.taperwright.catalogue.ui.motor;

import org.jspecify.annotations.NullMarked;
