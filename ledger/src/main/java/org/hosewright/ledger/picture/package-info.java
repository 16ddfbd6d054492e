/** The company's numbers as pictures: what pages and papers stroke alike. */
@NullMarked
package org.hosewright.ledger.picture;

import org.jspecify.annotations.NullMarked;
