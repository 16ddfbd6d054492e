/** Photographs, made plain before they are kept or printed. */
@NullMarked
package org.hosewright.documents.picture;

import org.jspecify.annotations.NullMarked;
