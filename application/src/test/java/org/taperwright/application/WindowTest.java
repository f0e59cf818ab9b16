package org.taperwright.application;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * Marks a class of tests that drive the real workbench: it is started once for the class, in a JVM of the class's own,
 * and handed to test methods as {@link Hands}. Without a display the tests are skipped and the run's last lines say so.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(WindowTests.class)
@interface WindowTest {}
