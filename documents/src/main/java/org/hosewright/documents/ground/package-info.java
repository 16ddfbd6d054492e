/** Papers about the ground: a stretch to an address, and what each length reaches along a walk. */
@NullMarked
package org.hosewright.documents.ground;

import org.jspecify.annotations.NullMarked;
