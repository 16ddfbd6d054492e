/** The pages and the libraries they load. */
@NullMarked
package org.hosewright.web;

import org.jspecify.annotations.NullMarked;
