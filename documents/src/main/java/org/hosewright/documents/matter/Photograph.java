package org.hosewright.documents.matter;

/** A company's photograph on its way to paper.
 *
 * @param name what it shows, in the company's words
 * @param jpegBase64 the picture
 */
public record Photograph(String name, String jpegBase64) {}
