/** Foam proportioning at a line. */
@NullMarked
package org.hosewright.hydraulics.foam;

import org.jspecify.annotations.NullMarked;
