/** The pages and their files over HTTP. */
@NullMarked
package org.hosewright.server.page;

import org.jspecify.annotations.NullMarked;
