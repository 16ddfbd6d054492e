package org.hosewright.hydraulics.quantity;

/** A place in a text, moved from left to right. */
final class TextCursor {
    private final String text;
    private int at;

    TextCursor(String text) {
        this.text = text;
    }

    int place() {
        return at;
    }

    void moveTo(int place) {
        at = place;
    }

    void skip(int characters) {
        at += characters;
    }

    void skipSpaces() {
        while (stands(' ')) {
            at++;
        }
    }

    boolean atEnd() {
        return at >= text.length();
    }

    /** What is left, without spaces around it. */
    String rest() {
        return text.substring(at).trim();
    }

    boolean stands(char sign) {
        return !atEnd() && text.charAt(at) == sign;
    }

    boolean stands(String sign) {
        return text.startsWith(sign, at);
    }

    /** True where a word stands here and no letter follows it. */
    boolean standsWord(String word) {
        int end = at + word.length();
        return stands(word) && (end >= text.length() || !isLetter(text.charAt(end)));
    }

    /** True where a digit stands one further on. */
    boolean digitNext() {
        return isDigit(at + 1);
    }

    /** Passes over a sign and the spaces behind it, where it stands here. */
    boolean take(String sign) {
        if (!stands(sign)) {
            return false;
        }
        at += sign.length();
        skipSpaces();
        return true;
    }

    /** Passes over the digits that stand here; none is an empty text. */
    String digits() {
        int start = at;
        while (isDigit(at)) {
            at++;
        }
        return text.substring(start, at);
    }

    private boolean isDigit(int place) {
        return place < text.length() && text.charAt(place) >= '0' && text.charAt(place) <= '9';
    }

    private static boolean isLetter(char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    }
}
