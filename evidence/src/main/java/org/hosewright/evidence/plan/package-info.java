/** Choosing a test night's readings before the night: what can be flown safely, what it would tell, in which order. */
@NullMarked
package org.hosewright.evidence.plan;

import org.jspecify.annotations.NullMarked;
