package org.hosewright.documents.press;

import java.util.List;
import java.util.stream.Collectors;

/** A piece of a page: well-formed XHTML, made only from escaped text and known tags. */
public final class Html {
    public static final Html NOTHING = new Html("");

    private final String xml;

    private Html(String xml) {
        this.xml = xml;
    }

    /** Words, set properly. */
    public static Html text(String words) {
        return new Html(Typesetting.markup(words));
    }

    /** A tag around pieces. */
    public static Html tag(String name, Html... inside) {
        return new Html("<" + name + ">" + all(List.of(inside)).xml + "</" + name + ">");
    }

    /** A tag around words. */
    public static Html tag(String name, String words) {
        return tag(name, text(words));
    }

    /** Pieces in a row. */
    public static Html all(List<Html> pieces) {
        return new Html(pieces.stream().map(p -> p.xml).collect(Collectors.joining()));
    }

    /** Pieces in a row. */
    public static Html all(Html... pieces) {
        return all(List.of(pieces));
    }

    /** This piece, which is one tag, with an attribute. */
    public Html with(String attribute, String value) {
        int end = xml.indexOf('>');
        int at = xml.charAt(end - 1) == '/' ? end - 1 : end;
        return new Html(
                xml.substring(0, at) + " " + attribute + "=\"" + Typesetting.escaped(value) + "\"" + xml.substring(at));
    }

    /** This piece, which is one tag, in a class of the style sheet. */
    public Html in(String style) {
        return with("class", style);
    }

    /** A drawing, with the words that stand for it where it cannot be seen. */
    public static Html picture(String dataUri, String says) {
        return new Html("<img/>").with("src", dataUri).with("alt", says);
    }

    public boolean isEmpty() {
        return xml.isEmpty();
    }

    /** A short code of what stands here: another content, another code. */
    public String code() {
        return Fingerprint.of(xml).code();
    }

    /** The markup. */
    public String xml() {
        return xml;
    }
}
