/** The readings file and the typed row: cells first, then readings. */
@NullMarked
package org.hosewright.files.readings;

import org.jspecify.annotations.NullMarked;
