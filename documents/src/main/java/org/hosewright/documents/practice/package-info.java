/** Practice sheets for drivers on paper. */
@NullMarked
package org.hosewright.documents.practice;

import org.jspecify.annotations.NullMarked;
