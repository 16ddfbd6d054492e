/** Where the company's record lies. */
@NullMarked
package org.hosewright.cli.record;

import org.jspecify.annotations.NullMarked;
