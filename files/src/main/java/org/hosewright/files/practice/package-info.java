/** Practice sheets as text. */
@NullMarked
package org.hosewright.files.practice;

import org.jspecify.annotations.NullMarked;
