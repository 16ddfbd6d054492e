/** Stretches to an address: estimated before they are laid, kept, and learnt from once they were. */
@NullMarked
package org.hosewright.ledger.stretch;

import org.jspecify.annotations.NullMarked;
