/** The trade's rules for losses in hose and for the pump pressure, each with its source and the range it is good for. */
@NullMarked
package org.hosewright.hydraulics.method;

import org.jspecify.annotations.NullMarked;
