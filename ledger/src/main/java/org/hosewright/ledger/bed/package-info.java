/** What lies on the rigs, as people saw it at the daily check. */
@NullMarked
package org.hosewright.ledger.bed;

import org.jspecify.annotations.NullMarked;
