/**
 * Speed of the engine's steps, by JMH. In: nothing. Out: times on this machine; run with
 * {@code mvn -Pbenchmarks -pl shared/benchmarks -am -DskipTests verify}, with {@code -Dmeasure=Name} for some alone.
 */
@NullMarked
package org.taperwright.benchmarks;

import org.jspecify.annotations.NullMarked;
