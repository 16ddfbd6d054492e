/** All test nights of a company weighed together: hose by type and batch, instruments between calibrations, change over years. */
@NullMarked
package org.hosewright.evidence.pool;

import org.jspecify.annotations.NullMarked;
