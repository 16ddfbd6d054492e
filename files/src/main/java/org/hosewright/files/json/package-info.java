/** JSON texts of the record, read strictly. */
@NullMarked
package org.hosewright.files.json;

import org.jspecify.annotations.NullMarked;
