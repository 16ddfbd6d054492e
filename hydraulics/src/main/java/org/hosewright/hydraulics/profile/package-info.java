/** The line profile and the reach drawing as plain geometry: pages and papers only stroke it. */
@NullMarked
package org.hosewright.hydraulics.profile;

import org.jspecify.annotations.NullMarked;
