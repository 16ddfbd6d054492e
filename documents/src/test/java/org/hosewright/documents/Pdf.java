package org.hosewright.documents;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** A printed paper as a reader, a validator and an eye meet it. */
final class Pdf {
    interface Look<T> {
        T at(PDDocument document) throws IOException;
    }

    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private final byte[] bytes;

    Pdf(byte[] bytes) {
        this.bytes = bytes.clone();
    }

    byte[] bytes() {
        return bytes.clone();
    }

    <T> T look(Look<T> look) {
        try (PDDocument document = Loader.loadPDF(bytes)) {
            return look.at(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The words of each page, spaces evened, fractions and minus as one types them. */
    List<String> pages() {
        return look(document -> {
            List<String> pages = new ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(typed(stripper.getText(document)));
            }
            return pages;
        });
    }

    String text() {
        return String.join(" ", pages());
    }

    /** Set words as one would type them. */
    static String typed(String set) {
        return Normalizer.normalize(set, Normalizer.Form.NFKC)
                .replace('\u2044', '/')
                .replace('\u2212', '-')
                .replaceAll("\\s+", " ")
                .strip();
    }

    BufferedImage picture(int page, float dpi) {
        return look(document -> new PDFRenderer(document).renderImageWithDPI(page, dpi));
    }

    /** What a validator finds wrong against a profile ("ua1", "3a"); empty where it complies. */
    List<String> faults(String profile) {
        PDFAFlavour flavour = PDFAFlavour.fromString(profile);
        try (var parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(bytes), flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            var result = validator.validate(parser);
            List<String> faults = new ArrayList<>();
            for (TestAssertion assertion : result.getTestAssertions()) {
                if (assertion.getStatus() == TestAssertion.Status.FAILED) {
                    faults.add(assertion.getRuleId() + " at " + assertion.getLocation());
                }
            }
            if (faults.isEmpty() && !result.isCompliant()) {
                faults.add("not compliant, no rule named");
            }
            return faults;
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }
}
