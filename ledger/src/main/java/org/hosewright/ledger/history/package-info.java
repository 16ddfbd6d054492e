/** The append-only record of what was done to the company's numbers: who, when, what and why. */
@NullMarked
package org.hosewright.ledger.history;

import org.jspecify.annotations.NullMarked;
