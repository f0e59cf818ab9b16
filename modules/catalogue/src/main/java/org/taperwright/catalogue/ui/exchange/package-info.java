/**
 * Tables and bundles on their way in, with a preview of what is new, the same, changed or cannot be read, and selections on
 * their way out. In: files a person names. Out: one edit by name, or a file. Holds no class of the platform.
 */
@NullMarked
package org.taperwright.catalogue.ui.exchange;

import org.jspecify.annotations.NullMarked;
