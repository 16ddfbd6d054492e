/** What is laid on the ground, solved from the company's kit. */
@NullMarked
package org.hosewright.ledger.lay;

import org.jspecify.annotations.NullMarked;
