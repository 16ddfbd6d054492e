/** The sheet that goes to a neighbour beside the signed file. */
@NullMarked
package org.hosewright.documents.exchange;

import org.jspecify.annotations.NullMarked;
