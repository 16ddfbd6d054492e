/** Blind trials and their keys as text. */
@NullMarked
package org.hosewright.files.trial;

import org.jspecify.annotations.NullMarked;
