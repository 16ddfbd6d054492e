/** From a track to the way that was walked: distance, rise and a mark at every section. */
@NullMarked
package org.hosewright.ground.walk;

import org.jspecify.annotations.NullMarked;
