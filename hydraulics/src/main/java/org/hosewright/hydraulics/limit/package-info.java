/** What a line may not exceed, and how much of each limit it uses. */
@NullMarked
package org.hosewright.hydraulics.limit;

import org.jspecify.annotations.NullMarked;
