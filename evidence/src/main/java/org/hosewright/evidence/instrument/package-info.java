/** What people read on a test night, and how well it reads. */
@NullMarked
package org.hosewright.evidence.instrument;

import org.jspecify.annotations.NullMarked;
