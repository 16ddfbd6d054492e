/** Cards, tags and reports as tagged PDF. */
@NullMarked
package org.hosewright.documents;

import org.jspecify.annotations.NullMarked;
