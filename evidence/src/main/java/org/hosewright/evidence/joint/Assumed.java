package org.hosewright.evidence.joint;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The list of what a result takes as given, each sentence once, in the order met. */
final class Assumed {
    private final Set<String> sentences = new LinkedHashSet<>();

    void say(String sentence) {
        sentences.add(sentence);
    }

    List<String> list() {
        return new ArrayList<>(sentences);
    }
}
