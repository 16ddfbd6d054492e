/** Sparse linear systems of networks. */
@NullMarked
package org.hosewright.hydraulics.network.sparse;

import org.jspecify.annotations.NullMarked;
