/**
 * Tables of plain text, numbers aligned on the decimal point. In: headings and cells. Out: lines.
 */
@NullMarked
package org.taperwright.command.table;

import org.jspecify.annotations.NullMarked;
