/** What the browser asks of the physics, one text for one answer. */
@NullMarked
package org.hosewright.field;

import org.jspecify.annotations.NullMarked;
