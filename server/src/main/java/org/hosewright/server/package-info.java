/** HTTP routes and sessions over the ledger; serves the pages. */
@NullMarked
package org.hosewright.server;

import org.jspecify.annotations.NullMarked;
