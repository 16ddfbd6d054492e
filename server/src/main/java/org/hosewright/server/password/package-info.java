/** Which passwords will do, and how they are kept. */
@NullMarked
package org.hosewright.server.password;

import org.jspecify.annotations.NullMarked;
