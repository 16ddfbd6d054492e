package org.hosewright.documents.part;

import java.util.List;
import org.hosewright.documents.press.Html;
import org.hosewright.documents.stamp.Stamp;

/** Pieces that every paper bears. */
public final class Parts {
    /** What stands above any computed number. @source the usual words of training material (common practice) */
    public static final String OVERRULED = "Training and licensed practice, local codes and makers' ratings rule."
            + " Gauges and the nozzle crew's word overrule this paper.";

    private Parts() {}

    /** The stamp in words, at the head of the text. */
    public static Html stamp(Stamp stamp) {
        return Html.tag("p", Html.tag("strong", stamp.words()), Html.text(" " + stamp.meaning()))
                .in("stamp");
    }

    /** The heads that run on every page. */
    public static Html runningHead(Stamp stamp, String left, String right) {
        return Html.all(
                Html.tag("div", left).with("id", "head-left"),
                Html.tag("div", stamp.words()).with("id", "head-middle"),
                Html.tag("div", right).with("id", "head-right"));
    }

    /** Sentences as a list; nothing where there are none. */
    public static Html list(List<String> sentences) {
        return sentences.isEmpty()
                ? Html.NOTHING
                : Html.tag(
                        "ul",
                        Html.all(sentences.stream().map(s -> Html.tag("li", s)).toList()));
    }
}
