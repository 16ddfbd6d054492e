/** The ledger's ports on SQLite and PostgreSQL. */
@NullMarked
package org.hosewright.store;

import org.jspecify.annotations.NullMarked;
