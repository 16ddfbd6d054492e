/** What papers about the ground are made from. */
@NullMarked
package org.hosewright.documents.matter;

import org.jspecify.annotations.NullMarked;
