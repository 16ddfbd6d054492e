/** The order itself on paper: its numbers, what changed, who signed, and room for who has read it. */
@NullMarked
package org.hosewright.documents.order;

import org.jspecify.annotations.NullMarked;
