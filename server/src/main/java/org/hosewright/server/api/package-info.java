/** The routes under /api/v1. */
@NullMarked
package org.hosewright.server.api;

import org.jspecify.annotations.NullMarked;
