/** Quantities with units, and the one place for rounding. */
@NullMarked
package org.hosewright.hydraulics.quantity;

import org.jspecify.annotations.NullMarked;
