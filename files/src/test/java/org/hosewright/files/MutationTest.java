package org.hosewright.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.files.kit.KitText;
import org.hosewright.files.plain.PlainText;
import org.hosewright.files.readings.ReadingParser;
import org.hosewright.files.readings.ReadingsFile;
import org.hosewright.hydraulics.error.InvalidInput;
import org.junit.jupiter.api.Test;

/** Files with something broken in them, at random: each is read, or refused with its place; nothing else happens. */
class MutationTest {
    private static final int ROUNDS = 1000;
    private static final String SIGNS = "{}[]:,;#&*!|>'\"%@`-+.?~\\\t\r\n 019eExnN±/¼\u0000\uFEFF\u2028";

    @Test
    void brokenKitsHold() {
        String good = Examples.text("garden-court.kit.yaml");
        int read = broken(good, 41, text -> {
            var kit = KitDocument.of(text, "broken.yaml").kit();
            assertThat(KitDocument.of(KitText.write(kit), "written").kit()).isEqualTo(kit);
        });
        assertThat(read).as("some slips harm nothing, most do").isBetween(ROUNDS / 20, ROUNDS * 3 / 4);
    }

    @Test
    void brokenReadingsHold() {
        var kit = Examples.kit("drill-night.kit.yaml").kit();
        int read = broken(
                Examples.text("drill-night.readings.csv"),
                42,
                text -> ReadingParser.parse(ReadingsFile.read(text, "broken.csv"), kit, "broken.csv"));
        assertThat(read).as("some slips harm nothing, most do").isBetween(ROUNDS / 20, ROUNDS * 3 / 4);
    }

    private interface Reader {
        void read(String text);
    }

    private static int broken(String good, long seed, Reader reader) {
        Random random = new Random(seed);
        int read = 0;
        for (int round = 0; round < ROUNDS; round++) {
            byte[] bytes = mutated(good, random).getBytes(StandardCharsets.UTF_8);
            if (random.nextInt(20) == 0) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            }
            try {
                reader.read(PlainText.decode(bytes, "broken"));
                read++;
            } catch (InvalidInput e) {
                assertThat(e.where())
                        .as("seed %d, round %d: %s", seed, round, e.getMessage())
                        .startsWith("broken");
                assertThat(e.allowed()).as("seed %d, round %d", seed, round).isNotBlank();
            } catch (RuntimeException e) {
                fail("seed " + seed + ", round " + round + ", text:\n" + new String(bytes, StandardCharsets.UTF_8), e);
            }
        }
        return read;
    }

    private static String mutated(String good, Random random) {
        List<String> lines = new ArrayList<>(List.of(good.split("(?<=\n)")));
        int at = random.nextInt(lines.size());
        switch (random.nextInt(6)) {
            case 0 -> lines.remove(at);
            case 1 -> lines.add(at, lines.get(random.nextInt(lines.size())));
            case 2 -> Collections.swap(lines, at, random.nextInt(lines.size()));
            default -> lines.set(at, character(lines.get(at), random));
        }
        return String.join("", lines);
    }

    private static String character(String line, Random random) {
        int at = random.nextInt(line.length());
        String sign = String.valueOf(SIGNS.charAt(random.nextInt(SIGNS.length())));
        int cut = random.nextInt(3) == 0 ? 1 : 0;
        return random.nextInt(4) == 0
                ? line.substring(0, at) + line.substring(at + 1)
                : line.substring(0, at) + sign + line.substring(at + cut);
    }
}
