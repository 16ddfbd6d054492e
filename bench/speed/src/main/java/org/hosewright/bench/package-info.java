/** How fast networks and lines are solved. */
@NullMarked
package org.hosewright.bench;

import org.jspecify.annotations.NullMarked;
