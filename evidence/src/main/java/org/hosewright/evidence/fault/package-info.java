/** Which reading cannot be right beside the others, and what may have gone wrong with it. */
@NullMarked
package org.hosewright.evidence.fault;

import org.jspecify.annotations.NullMarked;
