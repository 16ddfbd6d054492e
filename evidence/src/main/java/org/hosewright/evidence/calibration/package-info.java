/** What a night tells, and what it cannot. */
@NullMarked
package org.hosewright.evidence.calibration;

import org.jspecify.annotations.NullMarked;
