/** The ledger's ports on SQLite and PostgreSQL; nothing of a database leaves this room. */
@NullMarked
package org.hosewright.store;

import org.jspecify.annotations.NullMarked;
