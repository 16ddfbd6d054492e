/** One line from a discharge to a tip, solved forward and backward, with its errors. */
@NullMarked
package org.hosewright.hydraulics.line;

import org.jspecify.annotations.NullMarked;
