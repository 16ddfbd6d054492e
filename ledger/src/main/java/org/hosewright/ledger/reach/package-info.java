/** How far each package can go. */
@NullMarked
package org.hosewright.ledger.reach;

import org.jspecify.annotations.NullMarked;
