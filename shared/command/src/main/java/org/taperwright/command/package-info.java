/**
 * The command line: the same work without a window. In: words and files. Out: tables for people or JSON for programs, and
 * an exit code: 0 on success, 2 on bad input, 1 on a failure of the program's own.
 */
@NullMarked
package org.taperwright.command;

import org.jspecify.annotations.NullMarked;
