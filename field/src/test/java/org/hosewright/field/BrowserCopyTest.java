package org.hosewright.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The JavaScript module that the browser loads, run in Node, against the same code on the Java machine. */
class BrowserCopyTest {
    /** As a share of the answer's largest number of that unit: the two targets' powers differ in the last digit. */
    private static final double SAME = 1e-10;

    private static final long SEED = 20261125;
    private static final int COUNT = 400;

    /** Supplies within supplies take some fifty milliseconds each. */
    private static final int FEW = 25;

    /** The examples' line and their two lines on a wye. */
    private static final String LINE = """
            {"line": {"discharge": {"id": "rear-2", "loss": "2.06 ± 1.0 psi @ 100 gpm"},\
             "hose": [{"id": "attack-175", "diameter": "1 3/4 in", "section": "50 ft",\
             "loss": "9.19 ± 0.21 psi / 100 ft @ 100 gpm", "length": "200 ft", "rise": "10 ft"}],\
             "nozzle": {"id": "seven-eighths", "bore": "7/8 in", "at": "50 psi"}}, "at": {"tip": "50 psi"}}""";

    /** Two lines into one standpipe, fed by a hydrant. */
    private static final String PIECES = """
            {"lay":{"lines":[{"discharge":{"id":"one"},"leg":{"hose":[HOSE],"join":"wet"}},\
            {"discharge":{"id":"two"},"leg":{"hose":[HOSE],"join":"wet"}}],\
            "joins":{"wet":{"leg":{"standpipe":{"rise":"30 ft","floors":[{"id":"f4","plain":true,\
            "leg":{"hose":[HOSE],"nozzle":{"id":"t","bore":"7/8 in","at":"50 psi"}}}]}}}},\
            "supply":{"keep":"20 psi","feeds":[{"hydrant":{"static":"62 psi","residual":"44 psi","at":"890 gpm"},\
            "hose":[HOSE]}]}},"at":{"pump":"120 psi"}}""".replace(
                    "HOSE",
                    "{\"id\":\"h\",\"diameter\":\"2 1/2 in\",\"section\":\"50 ft\","
                            + "\"loss\":\"2 psi / 100 ft @ 100 gpm\",\"length\":\"100 ft\"}");

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
        agree(new PieceQuestions(SEED).list(FEW));
    }

    @Test
    @Tag("long")
    void manyLaysOfEveryPieceInTheBrowserAgree() throws Exception {
        agree(new PieceQuestions(SEED + 1).list(COUNT));
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
        assertThat(refused).isLessThan(Math.max(1, questions.size() / 10));
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
                LINE.replace("50 psi\"}}, ", "50 psi\"}, \"line\": 2}, "),
                PIECES.replace("\"plain\":true", "\"unknown\":true"),
                PIECES.replace("\"plain\":true", "\"plain\":true,\"set\":\"80 psi\""),
                PIECES.replace("\"hydrant\"", "\"tank\":{\"level\":\"500 gal\"},\"hydrant\""),
                PIECES.replace("\"join\":\"wet\"", "\"join\":\"dry\""));
        List<String> theirs = Node.answers(questions, folder);
        for (int i = 0; i < questions.size(); i++) {
            assertThat(Answer.to(questions.get(i))).startsWith("{\"error\"").isEqualTo(theirs.get(i));
        }
        assertThat(theirs.get(3)).contains("line.hose[0].rise");
        assertThat(theirs.get(5)).contains("'colour'");
        assertThat(theirs.get(8)).contains("f4");
        assertThat(theirs.get(9)).contains("outlet of a floor");
        assertThat(theirs.get(10)).contains("lay.supply.feeds[0]");
        assertThat(theirs.get(11)).contains("join").contains("dry");
    }
}
