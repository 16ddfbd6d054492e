package org.hosewright.documents;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;

/** The words of a paper in the order that its tags give them to a voice. */
final class ReadingOrder {
    private final Map<String, String> words = new HashMap<>();
    private final StringBuilder spoken = new StringBuilder();

    private ReadingOrder() {}

    static String of(PDDocument document) throws IOException {
        ReadingOrder order = new ReadingOrder();
        for (PDPage page : document.getPages()) {
            PDFMarkedContentExtractor extractor = new NamedContent();
            extractor.processPage(page);
            extractor.getMarkedContents().forEach(content -> order.keep(page, content));
        }
        order.speak(document.getDocumentCatalog().getStructureTreeRoot(), null);
        return Pdf.typed(order.spoken.toString());
    }

    /** Finds the numbers of marked content that the page keeps by name among its resources. */
    private static final class NamedContent extends PDFMarkedContentExtractor {
        @Override
        public void beginMarkedContentSequence(COSName tag, COSDictionary given) {
            PDPropertyList named = given == null ? getResources().getProperties(tag) : null;
            super.beginMarkedContentSequence(tag, named == null ? given : named.getCOSObject());
        }
    }

    private void keep(PDPage page, PDMarkedContent content) {
        StringBuilder text = new StringBuilder();
        for (Object piece : content.getContents()) {
            if (piece instanceof TextPosition letter) {
                text.append(letter.getUnicode());
            }
        }
        words.put(key(page.getCOSObject(), content.getMCID()), text.toString());
    }

    private void speak(PDStructureNode node, COSDictionary page) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                speak(element, pageOf(element.getPage(), page));
                spoken.append(' ');
            } else if (kid instanceof Integer number) {
                spoken.append(words.getOrDefault(key(page, number), ""));
            } else if (kid instanceof PDMarkedContentReference reference) {
                spoken.append(words.getOrDefault(key(pageOf(reference.getPage(), page), reference.getMCID()), ""));
            }
        }
    }

    private static COSDictionary pageOf(PDPage own, COSDictionary above) {
        return own == null ? above : own.getCOSObject();
    }

    private static String key(COSDictionary page, int number) {
        return System.identityHashCode(page) + " " + number;
    }
}
