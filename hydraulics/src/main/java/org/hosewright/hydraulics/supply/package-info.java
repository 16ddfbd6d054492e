/** Where the water comes from: hydrant, supply hose and tank, tankers, relays, drafting. */
@NullMarked
package org.hosewright.hydraulics.supply;

import org.jspecify.annotations.NullMarked;
