/** What a company hands to its neighbours, and what they hand to it: shown as theirs, never as its own. */
@NullMarked
package org.hosewright.ledger.exchange;

import org.jspecify.annotations.NullMarked;
