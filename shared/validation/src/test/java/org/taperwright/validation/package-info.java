/** Checks against published and independently computed values; one class for each source. */
package org.taperwright.validation;
