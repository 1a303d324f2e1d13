// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;

/** A plain report as PDF in the dress of the certificates: a title, some facts, tables of words. */
public final class ReportPdf {
    private final String title;
    private final List<String> facts;
    private final List<Table> tables = new ArrayList<>();

    public ReportPdf(String title, List<String> facts) {
        this.title = title;
        this.facts = List.copyOf(facts);
    }

    /**
     * Adds a table.
     *
     * @param heads with each column's share of the width in %, as in {@code 30 figure}
     */
    @CanIgnoreReturnValue
    public ReportPdf table(List<String> heads, List<List<String>> rows) {
        Table table = new Table(heads.stream()
                .map(head -> head.split(" ", 2))
                .map(head -> Table.Column.words(head[1], Double.parseDouble(head[0])))
                .toList());
        rows.forEach(row -> table.row(row.stream().map(Table::cell).toList()));
        tables.add(table);
        return this;
    }

    /** Writes the report; the stream stays open. */
    public void write(OutputStream to) throws IOException {
        try (PDDocument document = new PDDocument()) {
            CertificatePdf.render(xhtml(), document);
            document.save(to);
        }
    }

    private String xhtml() {
        Markup to = new Markup(new Lettering()::legible);
        to.open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en");
        to.open("head").element("title", title);
        to.empty("meta", "name", "author", "content", "Isohume");
        to.empty("meta", "name", "subject", "content", title);
        to.open("style").made(CertificatePage.style()).close().close();
        to.open("body").open("div", "class", "running-foot").open("table").open("tr");
        to.element("td", title).open("td", "class", "right").text("Page ");
        to.open("span", "class", "page").close().text(" of ");
        to.open("span", "class", "pages").close().close().close().close().close();
        to.element("h1", title);
        facts.forEach(fact -> to.element("p", fact));
        tables.forEach(table -> table.write(to));
        return to.close().close().finish();
    }
}
