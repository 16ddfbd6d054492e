/** The names and quantities of a YAML file, read strictly. */
@NullMarked
package org.hosewright.files.term;

import org.jspecify.annotations.NullMarked;
