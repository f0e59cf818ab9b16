/**
 * A centreline found back from points along it. In: points in space, such as those picked in a scan or on a picture. Out: pieces
 * of a centreline with how closely they follow. Source: orthogonal distance regression by Levenberg-Marquardt (Commons Math).
 */
@NullMarked
package org.taperwright.shaping.canal.fit;

import org.jspecify.annotations.NullMarked;
