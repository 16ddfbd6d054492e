/** Walks and stretches as the record keeps them: JSON, every quantity with its unit. */
@NullMarked
package org.hosewright.files.walk;

import org.jspecify.annotations.NullMarked;
