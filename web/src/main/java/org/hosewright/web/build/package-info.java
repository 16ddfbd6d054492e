/** Work done once, while the program is built. */
@NullMarked
package org.hosewright.web.build;

import org.jspecify.annotations.NullMarked;
