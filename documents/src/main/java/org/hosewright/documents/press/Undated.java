package org.hosewright.documents.press;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDMetadata;

/** Takes the moment of printing out of a document: the same sheet gives the same bytes; its own date stands on it. */
final class Undated {
    private static final Pattern DATES =
            Pattern.compile("\\s*<xmp:(CreateDate|ModifyDate|MetadataDate)>[^<]*</xmp:\\1>");

    private Undated() {}

    static void strip(PDDocument document, Sheet sheet) throws IOException {
        document.getDocumentInformation().getCOSObject().removeItem(COSName.CREATION_DATE);
        document.getDocumentInformation().getCOSObject().removeItem(COSName.MOD_DATE);
        PDMetadata metadata = document.getDocumentCatalog().getMetadata();
        String xmp = new String(metadata.toByteArray(), StandardCharsets.UTF_8);
        metadata.importXMPMetadata(DATES.matcher(xmp).replaceAll("").getBytes(StandardCharsets.UTF_8));
        document.setDocumentId(Fingerprint.of(sheet.xhtml()).number());
    }
}
