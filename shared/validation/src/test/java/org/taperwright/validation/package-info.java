/** Values of the engine held against published and independent ones, one class for each source. */
package org.taperwright.validation;
