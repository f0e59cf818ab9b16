/**
 * What an instrument does to a canal stroke by stroke: where it lies, what it wears, what turns it, what it spends. In: a canal in
 * work, an instrument, how it is moved. Out: {@link org.taperwright.shaping.passage.stroke.StepOutcome} for each step and
 * {@link org.taperwright.shaping.passage.stroke.CanalOutcome} for the whole. Sources: the wear law of Archard and Preston taken
 * implicitly; cutting energy per volume; Coulomb friction; Miner's sum.
 *
 * <p>Neglected: friction around the axis on the placement (up to 0.03 mm out of plane), hysteresis torque (up to about 0.03 N·cm).
 */
@NullMarked
package org.taperwright.shaping.passage.stroke;

import org.jspecify.annotations.NullMarked;
