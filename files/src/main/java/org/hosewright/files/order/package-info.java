/** Sets of ordered pressures in the open format. */
@NullMarked
package org.hosewright.files.order;

import org.jspecify.annotations.NullMarked;
