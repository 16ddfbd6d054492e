/** Text files as they come in, and as they are put away. */
@NullMarked
package org.hosewright.files.plain;

import org.jspecify.annotations.NullMarked;
