/** What keeps other programs and sites from using the server through a person's browser. */
@NullMarked
package org.hosewright.server.guard;

import org.jspecify.annotations.NullMarked;
