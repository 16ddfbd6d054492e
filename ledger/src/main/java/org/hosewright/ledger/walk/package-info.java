/** What a package does along a way that was walked. */
@NullMarked
package org.hosewright.ledger.walk;

import org.jspecify.annotations.NullMarked;
