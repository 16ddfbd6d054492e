/** How pressure hangs on flow, piece by piece. */
@NullMarked
package org.hosewright.hydraulics.network.law;

import org.jspecify.annotations.NullMarked;
