// SPDX-License-Identifier: Apache-2.0
/**
 * The document. Start at {@link isohume.certificate.Certificate}: what one certificate says about one instrument.
 * {@link isohume.certificate.CertificatePdf} prints it; {@link isohume.certificate.ErrorPlot},
 * {@link isohume.certificate.ResultsJson} and {@link isohume.certificate.ReadingsCsv} show the same results as a
 * picture and as files.
 *
 * <p>May use: {@code result}, {@code moistair}, {@code uncertainty}, {@code journal}, {@code quantity}. State: none; everything is immutable and safe for any
 * thread. Figures are rounded here, at print, and nowhere before. Nothing here reads a clock: a certificate says when
 * it was issued, and the same certificate gives the same bytes.
 */
@NullMarked
@CheckReturnValue
package isohume.certificate;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
