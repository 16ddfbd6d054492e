/** What a stream does once it has left the tip. */
@NullMarked
package org.hosewright.hydraulics.stream;

import org.jspecify.annotations.NullMarked;
