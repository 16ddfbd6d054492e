/** Whether each rig is ready for the day: what its pressures rest on, and what is due for test. */
@NullMarked
package org.hosewright.ledger.ready;

import org.jspecify.annotations.NullMarked;
