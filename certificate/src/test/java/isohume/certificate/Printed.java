// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** A certificate as it came out, and what independent readers make of it. */
record Printed(ByteArrayOutputStream bytes) {
    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    /** Kept under {@code target}, where a person can look at it. */
    static Printed of(Certificate certificate, String name) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        CertificatePdf.write(certificate, out);
        Files.write(Files.createDirectories(Path.of("target", "printed")).resolve(name + ".pdf"), out.toByteArray());
        return new Printed(out);
    }

    byte[] array() {
        return bytes.toByteArray();
    }

    /** The text of each page, with every kind of space turned into one plain space. */
    List<String> pages() throws IOException {
        try (PDDocument document = Loader.loadPDF(array())) {
            List<String> pages = new ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setSortByPosition(true);
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document).replaceAll("[\\s\\u00A0\\u2009\\u202F]+", " "));
            }
            return pages;
        }
    }

    String text() throws IOException {
        return String.join(" ", pages());
    }

    /** What veraPDF finds wrong, empty when the document conforms. */
    TreeSet<String> faults(PDFAFlavour flavour) throws Exception {
        TreeSet<String> faults = new TreeSet<>();
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(array()), flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            var result = validator.validate(parser);
            for (TestAssertion assertion : result.getTestAssertions()) {
                if (assertion.getStatus() == TestAssertion.Status.FAILED) {
                    faults.add(assertion.getRuleId().getClause() + ": " + assertion.getMessage() + " at "
                            + assertion.getLocation().getContext());
                }
            }
            if (!result.isCompliant() && faults.isEmpty()) {
                faults.add("not compliant, and no reason given");
            }
        }
        return faults;
    }
}
