/** Test nights as the company keeps them: raw cells as typed, what people ruled, and what was accepted. */
@NullMarked
package org.hosewright.ledger.drill;

import org.jspecify.annotations.NullMarked;
