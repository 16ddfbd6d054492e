package org.hosewright.documents.press;

import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.jspecify.annotations.Nullable;

/** Answers every call for a typeface with ours, so that the machine's own are neither searched nor remembered. */
final class OwnTypefaces implements FontMapper {
    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String name, @Nullable PDFontDescriptor wanted) {
        return new FontMapping<>(Typeface.REGULAR.font(), false);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, @Nullable PDFontDescriptor wanted) {
        return new FontMapping<>(Typeface.REGULAR.font(), false);
    }

    @Override
    public CIDFontMapping getCIDFont(
            String name, @Nullable PDFontDescriptor wanted, @Nullable PDCIDSystemInfo characters) {
        return new CIDFontMapping(null, Typeface.REGULAR.font(), false);
    }
}
