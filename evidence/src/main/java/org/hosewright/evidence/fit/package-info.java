/** Least squares for problems whose every block has latent values of its own. */
@NullMarked
package org.hosewright.evidence.fit;

import org.jspecify.annotations.NullMarked;
