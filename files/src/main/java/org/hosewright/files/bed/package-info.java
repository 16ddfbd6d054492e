/** What lies on a rig, as text. */
@NullMarked
package org.hosewright.files.bed;

import org.jspecify.annotations.NullMarked;
