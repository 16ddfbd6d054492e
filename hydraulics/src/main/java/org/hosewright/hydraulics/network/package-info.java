/** Networks of pieces with a law each, solved for pressures and flows. */
@NullMarked
package org.hosewright.hydraulics.network;

import org.jspecify.annotations.NullMarked;
