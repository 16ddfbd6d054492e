/** Positions as a receiver recorded them, and distances on the earth. */
@NullMarked
package org.hosewright.ground.track;

import org.jspecify.annotations.NullMarked;
