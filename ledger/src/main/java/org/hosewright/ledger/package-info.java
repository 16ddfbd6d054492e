/** The company's own record and its rules. */
@NullMarked
package org.hosewright.ledger;

import org.jspecify.annotations.NullMarked;
