/** Who may come in: passwords, sessions, and what each door asks for. */
@NullMarked
package org.hosewright.server.door;

import org.jspecify.annotations.NullMarked;
