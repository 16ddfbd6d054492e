/** Papers that lie at the pump: the panel's card, the discharge tags, the pocket card. */
@NullMarked
package org.hosewright.documents.card;

import org.jspecify.annotations.NullMarked;
