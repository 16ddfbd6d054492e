/** The readings of a test night, as taken. */
@NullMarked
package org.hosewright.evidence.night;

import org.jspecify.annotations.NullMarked;
