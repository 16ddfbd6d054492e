/** Papers of a blind trial. */
@NullMarked
package org.hosewright.documents.trial;

import org.jspecify.annotations.NullMarked;
