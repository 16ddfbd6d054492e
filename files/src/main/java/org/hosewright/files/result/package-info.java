/** The one JSON writer: results with the keys that other programs may rely on. */
@NullMarked
package org.hosewright.files.result;

import org.jspecify.annotations.NullMarked;
