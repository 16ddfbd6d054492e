/** YAML as the open formats allow it: read strictly with the place of every value, changed in place. */
@NullMarked
package org.hosewright.files.yaml;

import org.jspecify.annotations.NullMarked;
