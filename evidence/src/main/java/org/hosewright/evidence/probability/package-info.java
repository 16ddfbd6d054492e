/** The few laws of chance that intervals and sample sizes rest on, in plain arithmetic. */
@NullMarked
package org.hosewright.evidence.probability;

import org.jspecify.annotations.NullMarked;
