// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import java.io.OutputStream;
import java.util.EnumSet;
import java.util.logging.Level;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * A certificate as PDF/A-3a and PDF/UA-1, with the results of its instrument attached as {@code results.json}. The same
 * certificate gives the same bytes on the same JDK.
 */
public final class CertificatePdf {
    static final String FAMILY = "Source Sans 3";
    private static final int NORMAL = 400;
    private static final int SEMIBOLD = 600;
    private static final float VERSION = 1.7f;

    static { // each page's timing would go to standard error otherwise; faults still do
        XRLog.listRegisteredLoggers().forEach(log -> XRLog.setLevel(log, Level.WARNING));
    }

    private CertificatePdf() {}

    /**
     * Writes the certificate; the stream stays open.
     *
     * @throws IllegalArgumentException when an expanded uncertainty is not above 0
     */
    public static void write(Certificate certificate, OutputStream to) throws IOException {
        CertificatePage page = new CertificatePage(certificate, new Lettering());
        try (PDDocument document = new PDDocument()) {
            render(page.xhtml(), document);
            PdfRecord.complete(document, certificate);
            document.save(to);
        }
    }

    static void render(String xhtml, PDDocument document) throws IOException {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.usePDDocument(document);
        builder.withHtmlContent(xhtml, null);
        builder.usePdfVersion(VERSION);
        builder.usePdfAConformance(PdfAConformance.PDFA_3_A);
        builder.usePdfUaAccessibility(true);
        builder.useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
        builder.withProducer("Isohume");
        builder.useSVGDrawer(new BatikSVGDrawer());
        font(builder, document, Lettering.REGULAR, NORMAL, FontStyle.NORMAL);
        font(builder, document, Lettering.SEMIBOLD, SEMIBOLD, FontStyle.NORMAL);
        font(builder, document, Lettering.ITALIC, NORMAL, FontStyle.ITALIC);
        try (var renderer = builder.buildPdfRenderer()) {
            renderer.createPDFWithoutClosing();
        }
    }

    private static void font(PdfRendererBuilder builder, PDDocument document, String file, int weight, FontStyle style)
            throws IOException {
        builder.useFont(new PDFontSupplier(Lettering.load(file, document)), FAMILY, weight, style, true);
        builder.useFont(() -> Lettering.open(file), FAMILY, weight, style, true, EnumSet.of(FSFontUseCase.SVG));
    }
}
