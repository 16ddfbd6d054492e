/** Parts that several papers share. */
@NullMarked
package org.hosewright.documents.part;

import org.jspecify.annotations.NullMarked;
