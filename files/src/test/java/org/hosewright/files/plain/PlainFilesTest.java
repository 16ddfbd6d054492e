package org.hosewright.files.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.hosewright.hydraulics.error.InvalidInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files as they come in and are put away. */
class PlainFilesTest {
    private static final long FIFTY_MB = 50_000_000;

    @TempDir
    Path folder;

    @Test
    void largeFileIsRefusedBeforeItIsReadHolds() throws IOException {
        Path large = folder.resolve("night.csv");
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(FIFTY_MB);
        }
        assertThatThrownBy(() -> PlainText.read(large, PlainText.CSV_LIMIT))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("night.csv: size cannot be '50000000 bytes'; what would do: a text file of at most 2 MB.");
    }

    @Test
    void endlessStreamIsReadNoFurtherThanItsLimitHolds() {
        long[] given = {0};
        InputStream endless = new InputStream() {
            @Override
            public int read() {
                given[0]++;
                return 'x';
            }

            @Override
            public int read(byte[] into, int from, int count) {
                java.util.Arrays.fill(into, from, from + count, (byte) 'x');
                given[0] += count;
                return count;
            }
        };
        assertThatThrownBy(() -> PlainText.read(endless, PlainText.CSV_LIMIT, "upload"))
                .hasMessage(
                        "upload: size cannot be 'more than 2000000 bytes'; what would do: a text file of at most 2 MB.");
        assertThat(given[0]).isEqualTo(PlainText.CSV_LIMIT + 1L);
    }

    @Test
    void whatIsNotTextIsRefusedHolds() {
        for (byte[] bytes : new byte[][] {
            {'%', 'P', 'D', 'F', 0}, {(byte) 0xFF, (byte) 0xFE, 'a', 0}, {(byte) 0xC3, '('}, {'a', 7, 'b'}
        }) {
            assertThatThrownBy(() -> PlainText.decode(bytes, "night.csv"))
                    .hasMessage("night.csv: content cannot be 'not text'; what would do: a text file in UTF-8.");
        }
    }

    @Test
    void missingFileAndFolderAreRefusedHolds() {
        assertThatThrownBy(() -> PlainText.read(folder.resolve("none.csv"), 10))
                .hasMessageContaining("a file that is there");
        assertThatThrownBy(() -> PlainText.read(folder, 10)).isInstanceOf(InvalidInput.class);
    }

    @Test
    void byteOrderMarkIsDroppedHolds() {
        assertThat(PlainText.decode("\uFEFFformat: 1".getBytes(StandardCharsets.UTF_8), "kit"))
                .isEqualTo("format: 1");
    }

    @Test
    void newFileIsWholeOrNotThereHolds() throws IOException {
        Path file = folder.resolve("new.kit.yaml");
        NewFile.write(file, bytes("first"), false);
        assertThatThrownBy(() -> NewFile.write(file, bytes("second"), false))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("--force");
        assertThat(file).hasContent("first");
        NewFile.write(file, bytes("second"), true);
        assertThat(file).hasContent("second");
        assertThatThrownBy(() -> NewFile.write(folder.resolve("no/such.yaml"), bytes("x"), false))
                .hasMessageContaining("a folder that is there");
        assertThatThrownBy(() -> NewFile.write(folder, bytes("x"), true)).hasMessageContaining("not a folder");
        try (var left = Files.list(folder)) {
            assertThat(left).containsExactly(file);
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
