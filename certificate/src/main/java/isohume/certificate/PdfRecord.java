// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/** What a PDF carries besides its pages: dates that are the certificate's own, and the results as a file. */
final class PdfRecord {
    static final String ATTACHED = "results.json";
    private static final Pattern CREATED = Pattern.compile("(<xmp:CreateDate>)[^<]*(</xmp:CreateDate>)");

    private PdfRecord() {}

    static void complete(PDDocument document, Certificate certificate) throws IOException {
        date(document, certificate.issuedAt());
        byte[] json = json(certificate);
        attach(document, json, certificate);
        document.setDocumentId(number(certificate, json));
    }

    private static Calendar calendar(Instant at) {
        return GregorianCalendar.from(at.atZone(ZoneOffset.UTC));
    }

    /** The writer of the pages puts in the time at which it ran. */
    private static void date(PDDocument document, Instant issuedAt) throws IOException {
        document.getDocumentInformation().setCreationDate(calendar(issuedAt));
        PDMetadata metadata = document.getDocumentCatalog().getMetadata();
        String xmp = new String(metadata.toByteArray(), StandardCharsets.UTF_8);
        String stamp = Instant.ofEpochSecond(issuedAt.getEpochSecond()).toString();
        String dated = CREATED.matcher(xmp).replaceFirst("$1" + stamp + "$2");
        if (dated.equals(xmp) && !xmp.contains(stamp)) {
            throw new IllegalStateException("the document's metadata has no date of creation to set");
        }
        metadata.importXMPMetadata(dated.getBytes(StandardCharsets.UTF_8));
    }

    private static byte[] json(Certificate certificate) throws IOException {
        StringWriter text = new StringWriter();
        ResultsJson.write(certificate.results(), text);
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void attach(PDDocument document, byte[] json, Certificate certificate) throws IOException {
        PDEmbeddedFile file = new PDEmbeddedFile(document, new ByteArrayInputStream(json), COSName.FLATE_DECODE);
        file.setSubtype("application/json");
        file.setSize(json.length);
        file.setCreationDate(calendar(certificate.issuedAt()));
        file.setModDate(calendar(certificate.issuedAt()));
        PDComplexFileSpecification attached = new PDComplexFileSpecification();
        attached.setFile(ATTACHED);
        attached.setFileUnicode(ATTACHED);
        attached.setFileDescription("Results of certificate " + certificate.number());
        attached.setEmbeddedFile(file);
        attached.setEmbeddedFileUnicode(file);
        attached.getCOSObject().setName("AFRelationship", "Data");
        PDEmbeddedFilesNameTreeNode files = new PDEmbeddedFilesNameTreeNode();
        files.setNames(Map.of(ATTACHED, attached));
        PDDocumentNameDictionary names = new PDDocumentNameDictionary(document.getDocumentCatalog());
        names.setEmbeddedFiles(files);
        document.getDocumentCatalog().setNames(names);
        COSArray associated = new COSArray();
        associated.add(attached);
        document.getDocumentCatalog().getCOSObject().setItem(COSName.getPDFName("AF"), associated);
    }

    /** PDFBox would take the time of day. */
    private static long number(Certificate certificate, byte[] json) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(certificate.number().getBytes(StandardCharsets.UTF_8));
            digest.update(certificate.issuedAt().toString().getBytes(StandardCharsets.UTF_8));
            return ByteBuffer.wrap(digest.digest(json)).getLong();
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every JDK has SHA-256", impossible);
        }
    }
}
