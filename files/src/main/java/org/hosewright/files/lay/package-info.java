/** The lay file: what is laid and what is asked of it. */
@NullMarked
package org.hosewright.files.lay;

import org.jspecify.annotations.NullMarked;
