/** The pages in a real browser. */
package org.hosewright.acceptance.browser;
