/** Pump pressures as orders: proposed, signed, fitted, acknowledged, superseded; never edited. */
@NullMarked
package org.hosewright.ledger.order;

import org.jspecify.annotations.NullMarked;
