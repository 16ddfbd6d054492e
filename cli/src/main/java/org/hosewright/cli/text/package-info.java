/** Results as plain text, for a terminal. */
@NullMarked
package org.hosewright.cli.text;

import org.jspecify.annotations.NullMarked;
