/** All test nights of the company together: its hose by type and batch, over years and rigs. */
@NullMarked
package org.hosewright.ledger.years;

import org.jspecify.annotations.NullMarked;
