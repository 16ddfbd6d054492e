/** What stands across a sheet that is no order. */
@NullMarked
package org.hosewright.documents.stamp;

import org.jspecify.annotations.NullMarked;
