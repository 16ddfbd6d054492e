/** How a sheet gets onto paper: typefaces, drawn lines, pages, the stamp across them. */
@NullMarked
package org.hosewright.documents.press;

import org.jspecify.annotations.NullMarked;
