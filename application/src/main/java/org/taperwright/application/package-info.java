/**
 * Starts the built workbench. In: the folder it was built into. Out: the workbench's window or, without a display, the
 * command line's comparison of the demo designs.
 */
package org.taperwright.application;
