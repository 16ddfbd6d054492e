/** Hose to take for a stretch, estimated before it is laid. */
@NullMarked
package org.hosewright.ground.stretch;

import org.jspecify.annotations.NullMarked;
