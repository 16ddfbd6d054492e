/** One spelling for each value, and the digest of it: what is chained, compared and signed. */
@NullMarked
package org.hosewright.ledger.canonical;

import org.jspecify.annotations.NullMarked;
