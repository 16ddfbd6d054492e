package org.hosewright.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The JavaScript module that the browser loads, run in Node, against the same code on the Java machine. */
class BrowserCopyTest {
    /** As a share of the answer's largest number of that unit: the two targets' powers differ in the last digit. */
    private static final double SAME = 1e-10;

    private static final long SEED = 20261125;
    private static final int COUNT = 400;

    /** The examples' line and their two lines on a wye. */
    private static final String LINE = """
            {"line": {"discharge": {"id": "rear-2", "loss": "2.06 ± 1.0 psi @ 100 gpm"},\
             "hose": [{"id": "attack-175", "diameter": "1 3/4 in", "section": "50 ft",\
             "loss": "9.19 ± 0.21 psi / 100 ft @ 100 gpm", "length": "200 ft", "rise": "10 ft"}],\
             "nozzle": {"id": "seven-eighths", "bore": "7/8 in", "at": "50 psi"}}, "at": {"tip": "50 psi"}}""";

    @TempDir
    private Path folder;

    @Test
    void linesAndLaysInTheBrowserAgree() throws Exception {
        List<String> questions = new ArrayList<>(new Questions(SEED).list(COUNT));
        questions.add(LINE);
        agree(questions);
    }

    @Test
    void laysOfEveryPieceInTheBrowserAgree() throws Exception {
        agree(new PieceQuestions(SEED).list(COUNT));
    }

    @Test
    void networksInTheBrowserAgree() throws Exception {
        agree(new NetworkQuestions(SEED).list(COUNT));
    }

    private void agree(List<String> questions) throws Exception {
        List<String> theirs = Node.answers(questions, folder);
        assertThat(theirs).hasSameSizeAs(questions);
        double worst = 0;
        int refused = 0;
        for (int i = 0; i < questions.size(); i++) {
            String ours = Answer.to(questions.get(i));
            double share = Apart.share(ours, theirs.get(i));
            assertThat(share).as("seed " + SEED + ", " + questions.get(i)).isLessThan(SAME);
            worst = Math.max(worst, share);
            refused += ours.startsWith("{\"error\"") ? 1 : 0;
        }
        System.out.println(questions.size() + " questions, " + refused + " refused: at most " + worst + " apart");
        assertThat(refused).isLessThan(COUNT / 10);
    }

    @Test
    void exampleLineMatchesPractice() {
        assertThat(Answer.to(LINE)).contains("\"pump_Pa\":7390");
    }

    /** What is wrong is said with its place, in the browser as here. */
    @Test
    void wrongQuestionsRefused() throws Exception {
        List<String> questions = List.of(
                "{",
                "[]",
                "{\"line\":1,\"at\":{\"tip\":\"50 psi\"}}",
                LINE.replace("10 ft\"", "10 psi\""),
                LINE.replace("\"at\": {\"tip\"", "\"at\": {\"speed\""),
                LINE.replace("\"nozzle\"", "\"colour\": \"red\", \"nozzle\""),
                LINE.replace("\"200 ft\"", "true"),
                LINE.replace("50 psi\"}}, ", "50 psi\"}, \"line\": 2}, "));
        List<String> theirs = Node.answers(questions, folder);
        for (int i = 0; i < questions.size(); i++) {
            assertThat(Answer.to(questions.get(i))).startsWith("{\"error\"").isEqualTo(theirs.get(i));
        }
        assertThat(theirs.get(3)).contains("line.hose[0].rise");
        assertThat(theirs.get(5)).contains("'colour'");
    }
}
