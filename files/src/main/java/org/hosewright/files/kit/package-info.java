/** The kit file: read strictly, edited in place, written out whole. */
@NullMarked
package org.hosewright.files.kit;

import org.jspecify.annotations.NullMarked;
