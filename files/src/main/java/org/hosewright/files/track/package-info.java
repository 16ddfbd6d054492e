/** Walked tracks: GPX, GeoJSON and terrain files, read within bounds and written with their marks. */
@NullMarked
package org.hosewright.files.track;

import org.jspecify.annotations.NullMarked;
