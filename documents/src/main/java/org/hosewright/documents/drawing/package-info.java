/** Drawn lines: what is stroked rather than set. */
@NullMarked
package org.hosewright.documents.drawing;

import org.jspecify.annotations.NullMarked;
