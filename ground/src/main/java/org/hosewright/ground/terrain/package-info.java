/** Heights of the ground from a terrain file. */
@NullMarked
package org.hosewright.ground.terrain;

import org.jspecify.annotations.NullMarked;
