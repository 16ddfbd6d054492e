/** The people who may work with the record, and the rules of its doors. */
@NullMarked
package org.hosewright.ledger.person;

import org.jspecify.annotations.NullMarked;
