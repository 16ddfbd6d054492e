/** JSON, small enough to run in the browser beside the physics. */
@NullMarked
package org.hosewright.field.json;

import org.jspecify.annotations.NullMarked;
