/** Practice problems for drivers, asked of the numbers of a signed order. */
@NullMarked
package org.hosewright.ledger.practice;

import org.jspecify.annotations.NullMarked;
