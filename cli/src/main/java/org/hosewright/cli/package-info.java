/** Commands and wiring; the one executable. */
@NullMarked
package org.hosewright.cli;

import org.jspecify.annotations.NullMarked;
