/** What companies hand to each other: signed files, the key that signs, what is kept of a neighbour. */
@NullMarked
package org.hosewright.files.exchange;

import org.jspecify.annotations.NullMarked;
