package org.hosewright.ledger.kit;

/** What a number in the kit rests on.
 *
 * @param kind the sort of source
 * @param night id of the test night; empty for the other kinds
 */
public record Basis(Kind kind, String night) {
    /** The sorts of source. */
    public enum Kind {
        BOOK("book"),
        MAKER("maker"),
        TEST("test"),
        ESTIMATE("estimate");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** As written in a kit file: "book", "test drill-night". */
    public String text() {
        return night.isEmpty() ? kind.word() : kind.word() + " " + night;
    }
}
