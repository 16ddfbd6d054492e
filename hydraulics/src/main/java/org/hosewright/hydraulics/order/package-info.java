/** A pump pressure as it is ordered: rounded, and checked from both sides. */
@NullMarked
package org.hosewright.hydraulics.order;

import org.jspecify.annotations.NullMarked;
