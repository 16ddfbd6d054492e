/** The plan of a test night: what was asked as JSON, and its blank readings as a table. */
@NullMarked
package org.hosewright.files.plan;

import org.jspecify.annotations.NullMarked;
