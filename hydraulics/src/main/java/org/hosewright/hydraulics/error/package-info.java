/** The few kinds of error. */
@NullMarked
package org.hosewright.hydraulics.error;

import org.jspecify.annotations.NullMarked;
