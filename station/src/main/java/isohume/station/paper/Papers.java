// SPDX-License-Identifier: Apache-2.0
package isohume.station.paper;

import isohume.certificate.Certificate;
import isohume.certificate.CertificatePdf;
import isohume.certificate.ReadingsCsv;
import isohume.certificate.ResultsJson;
import isohume.result.Item;
import isohume.result.Results;
import isohume.station.Program;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The files of one calibration. All are made before the first is written, so that trouble leaves none half done. */
public final class Papers {
    private static final String CERTIFICATE = "certificate-";
    private static final String PDF = ".pdf";

    private Papers() {}

    /**
     * Writes {@code summary.json}, {@code readings.csv} and one {@code certificate-<id>.pdf} per instrument.
     *
     * @throws IOException when the folder cannot be written
     */
    public static void write(Results results, Instant issuedAt, Path folder) throws IOException {
        write(results, results.objections(), issuedAt, folder);
    }

    /**
     * The same with remarks, which stand in the summary and on each certificate.
     *
     * @throws IOException when the folder cannot be written
     */
    public static void write(Results results, List<String> remarks, Instant issuedAt, Path folder) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("summary.json", summary(results, remarks));
        files.put("readings.csv", readings(results));
        for (Item item : results.job().items()) {
            if (!results.of(item.id()).isEmpty()) {
                files.put(
                        certificateName(item.id()),
                        pdf(draft(results, item.id(), issuedAt).withRemarks(remarks)));
            }
        }
        Files.createDirectories(folder);
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            put(folder.resolve(file.getKey()), file.getValue());
        }
    }

    /** The file of an instrument's certificate. */
    public static String certificateName(String item) {
        return CERTIFICATE + item + PDF;
    }

    /** The instrument whose certificate a file is; the inverse of {@link #certificateName}. */
    public static String itemOf(String certificateName) {
        return certificateName.substring(CERTIFICATE.length(), certificateName.length() - PDF.length());
    }

    /**
     * Puts a file in its place whole or not at all.
     *
     * @throws NoSuchFileException when there is no folder to put it into
     */
    public static void put(Path file, byte[] content) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null && !Files.isDirectory(folder)) {
            throw new NoSuchFileException(folder.toString());
        }
        Path part = file.resolveSibling(file.getFileName() + ".part");
        try {
            Files.write(part, content);
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** An instrument's certificate, not authorised yet; what stands against issuing it is among its remarks. */
    public static Certificate draft(Results results, String item, Instant issuedAt) {
        String number = results.job().number() + "-" + item;
        return Certificate.of(results, item, number, issuedAt, ZoneOffset.UTC, Program.title())
                .withRemarks(results.objections());
    }

    /** A certificate as PDF. */
    public static byte[] pdf(Certificate certificate) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        CertificatePdf.write(certificate, bytes);
        return bytes.toByteArray();
    }

    /** Results as JSON. */
    public static byte[] summary(Results results) throws IOException {
        return summary(results, results.objections());
    }

    /** Results as JSON, and what is to be said about them. */
    public static byte[] summary(Results results, List<String> remarks) throws IOException {
        StringWriter text = new StringWriter();
        ResultsJson.write(results, remarks, text);
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** Readings as CSV. */
    public static byte[] readings(Results results) throws IOException {
        StringWriter text = new StringWriter();
        ReadingsCsv.write(results, text);
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }
}
