package org.hosewright.documents.press;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.FontMappers;

/** The printing press: a sheet goes in, a tagged PDF with its typefaces inside comes out (PDF/UA-1, PDF/A-3a). */
public final class Press {
    private static final String PRODUCER = "Hosewright";
    private static final byte[] SRGB =
            ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();

    static {
        FontMappers.set(new OwnTypefaces());
        XRLog.setLoggingEnabled(false);
    }

    private Press() {}

    /** The PDF of a sheet. */
    public static byte[] print(Sheet sheet) {
        try (PdfBoxRenderer renderer = renderer(sheet);
                PDDocument document = renderer.createPDFKeepOpen();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            new StampInk(sheet).across(document);
            CodeInk.put(sheet, document);
            Undated.strip(document, sheet);
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static PdfBoxRenderer renderer(Sheet sheet) {
        return new PdfRendererBuilder()
                .useFont(Typeface.REGULAR::open, Typeface.FAMILY, 400, FontStyle.NORMAL, true)
                .useFont(Typeface.BOLD::open, Typeface.FAMILY, 700, FontStyle.NORMAL, true)
                .usePdfAConformance(PdfAConformance.PDFA_3_A)
                .usePdfUaAccessibility(true)
                .useColorProfile(SRGB)
                .useSVGDrawer(new BatikSVGDrawer())
                .withProducer(PRODUCER)
                .withHtmlContent(sheet.xhtml(), null)
                .buildPdfRenderer();
    }
}
