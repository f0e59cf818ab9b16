/** A rod in a rigid tube by another method than the engine's: Cartesian positions, logarithmic barrier, differences. */
package org.taperwright.validation.interior;
