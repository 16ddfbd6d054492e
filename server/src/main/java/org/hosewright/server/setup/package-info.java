/** What a server is started with. */
@NullMarked
package org.hosewright.server.setup;

import org.jspecify.annotations.NullMarked;
