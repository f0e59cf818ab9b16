/**
 * Immutable sorted collections that share what they have in common with those they were made from. In: keys and values.
 * Out: trees, views of them as maps and lists, and what differs between two.
 */
@NullMarked
package org.taperwright.library.store.tree;

import org.jspecify.annotations.NullMarked;
