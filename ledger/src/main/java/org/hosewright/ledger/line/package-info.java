/** Lines made from the names in a kit, with what is known of their errors and bounds. */
@NullMarked
package org.hosewright.ledger.line;

import org.jspecify.annotations.NullMarked;
