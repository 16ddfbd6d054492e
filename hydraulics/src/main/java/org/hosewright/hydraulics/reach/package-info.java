/** How far a line goes and what stops it. */
@NullMarked
package org.hosewright.hydraulics.reach;

import org.jspecify.annotations.NullMarked;
