/** What a company owns that water passes through. */
@NullMarked
package org.hosewright.hydraulics.equipment;

import org.jspecify.annotations.NullMarked;
