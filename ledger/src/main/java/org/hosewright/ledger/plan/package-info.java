/** Planning a test night with the company's kit. */
@NullMarked
package org.hosewright.ledger.plan;

import org.jspecify.annotations.NullMarked;
