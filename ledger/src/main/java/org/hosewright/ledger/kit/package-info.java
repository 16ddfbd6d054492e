/** The company's equipment, as one record. */
@NullMarked
package org.hosewright.ledger.kit;

import org.jspecify.annotations.NullMarked;
