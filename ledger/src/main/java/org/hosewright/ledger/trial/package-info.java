/** Blind trials as the company keeps them: what is compared, in which order, who holds the key, what was read, what it carries. */
@NullMarked
package org.hosewright.ledger.trial;

import org.jspecify.annotations.NullMarked;
