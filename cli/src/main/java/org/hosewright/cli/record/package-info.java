/** Where the company's record lies, and the invented company that the demo shows. */
@NullMarked
package org.hosewright.cli.record;

import org.jspecify.annotations.NullMarked;
