/** From readings to numbers: instruments, drill readings, the joint fit and what it cannot tell. */
@NullMarked
package org.hosewright.evidence;

import org.jspecify.annotations.NullMarked;
