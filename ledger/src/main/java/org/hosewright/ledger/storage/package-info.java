/** What every port of the ledger may fail with, and nothing else; the ports themselves stand with their aggregates. */
@NullMarked
package org.hosewright.ledger.storage;

import org.jspecify.annotations.NullMarked;
