/** Water in hose: quantities, equipment, lays, limits and reach. */
@NullMarked
package org.hosewright.hydraulics;

import org.jspecify.annotations.NullMarked;
