/** How the readings of a night hang together: its unknowns with what is believed of them beforehand, and each reading as a row. */
@NullMarked
package org.hosewright.evidence.joint;

import org.jspecify.annotations.NullMarked;
