/**
 * The scene of a sequence on the platform's visual library: the canal along its length and a lane for each step. In: what
 * to show, as {@link org.taperwright.sequencer.scene.SceneContent}. Out: what a person asks for, to
 * {@link org.taperwright.sequencer.scene.SceneOrders}.
 */
@NullMarked
package org.taperwright.sequencer.scene;

import org.jspecify.annotations.NullMarked;
