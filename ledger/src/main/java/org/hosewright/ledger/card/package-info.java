/** Pump cards and tags, from one kit. */
@NullMarked
package org.hosewright.ledger.card;

import org.jspecify.annotations.NullMarked;
