package org.hosewright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.hosewright.documents.stamp.SheetCode;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.ledger.card.CardSet;
import org.junit.jupiter.api.Test;

/** Each piece that is cut out of a sheet bears the order's code, and a picture of that piece alone is read back. */
class PieceCodeTest {
    /** A phone's picture of a tag at a hand's length is finer. */
    private static final float DPI = 200;

    private static final double PX_PER_MM = DPI / 25.4;
    private static final CardSet US = Samples.brindleFalls();
    private static final SheetCode CODE = new SheetCode(12, "engine-41+engine-42", "3f2a90c1");
    private static final Stamp STAMP = Stamp.past(12, "superseded").inDemo().bearing(CODE);

    @Test
    void safety16EveryTagCutOutIsReadBack() throws IOException {
        Pdf tags = new Pdf(Papers.tags(US, STAMP));
        BufferedImage page = tags.picture(0, DPI);
        int count = CardText.lines(US).size();
        assertThat(count).isGreaterThan(2);
        for (int tag = 0; tag < count; tag++) {
            BufferedImage piece = cut(page, 10 + 95 * (tag % 2), 32 + 79 * (tag / 2), 95, 79);
            assertThat(read(piece)).isEqualTo(CODE.ofEngine("engine-41"));
        }
    }

    @Test
    void safety16EveryLeafOfThePocketCardIsReadBack() throws IOException {
        Pdf pocket = new Pdf(Papers.pocketCard(US, STAMP));
        int pages = pocket.look(document -> document.getNumberOfPages());
        int seen = 0;
        for (int page = 0; page < pages; page++) {
            BufferedImage picture = pocket.picture(page, DPI);
            for (int leaf = 0; leaf < 3; leaf++) {
                var found = SheetCode.find(png(cut(picture, 10 + 85 * leaf, 34, 85, 140)));
                found.ifPresent(code -> assertThat(code).isIn(CODE, CODE.ofEngine("engine-41")));
                seen += found.isPresent() ? 1 : 0;
            }
        }
        assertThat(seen).isEqualTo(pocketLeaves(pocket));
    }

    @Test
    void sheetOfTooManyEnginesForASquareSaysAllHolds() {
        var many = IntStream.range(0, 50).mapToObj(i -> "engine-" + i).toList();
        SheetCode code = SheetCode.ofEngines(12, many, "3f2a90c1");
        assertThat(SheetCode.parse(code.text())).isEqualTo(new SheetCode(12, "all", "3f2a90c1"));
    }

    /** Each leaf ends with the company and the revision, once in the running head of each page. */
    private static int pocketLeaves(Pdf pocket) {
        int pages = pocket.pages().size();
        return pocket.text().split("revision " + Samples.REVISION, -1).length - 1 - pages;
    }

    private static SheetCode read(BufferedImage piece) throws IOException {
        return SheetCode.find(png(piece)).orElseThrow();
    }

    private static BufferedImage cut(BufferedImage page, double x_mm, double y_mm, double width_mm, double height_mm) {
        return page.getSubimage(px(x_mm), px(y_mm), px(width_mm), px(height_mm));
    }

    private static int px(double mm) {
        return (int) Math.round(mm * PX_PER_MM);
    }

    private static byte[] png(BufferedImage picture) throws IOException {
        var bytes = new ByteArrayOutputStream();
        ImageIO.write(picture, "png", bytes);
        return bytes.toByteArray();
    }
}
