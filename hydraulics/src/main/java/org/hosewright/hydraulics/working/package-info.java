/** Hand calculations for the numbers that people act on. */
@NullMarked
package org.hosewright.hydraulics.working;

import org.jspecify.annotations.NullMarked;
