/** The open formats: kit, readings, lays, and the one JSON writer. */
@NullMarked
package org.hosewright.files;

import org.jspecify.annotations.NullMarked;
