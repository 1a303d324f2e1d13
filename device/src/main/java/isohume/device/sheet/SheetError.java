// SPDX-License-Identifier: Apache-2.0
package isohume.device.sheet;

/**
 * Something in a document that a person has to put right. The message has the form
 * {@code plan.yaml:12:9: temperature is "warm"; a number in °C is needed here}.
 */
public final class SheetError extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final String source;
    private final int line;
    private final int column;
    private final String what;
    private final String remedy;

    /**
     * @param source the document's name
     * @param line from 1; 0 if the document as a whole is meant
     * @param column from 1; 0 if the document as a whole is meant
     * @param what what was found
     * @param remedy what is needed instead, or what to do
     */
    public SheetError(String source, int line, int column, String what, String remedy) {
        super((line > 0 ? source + ":" + line + ":" + column : source) + ": " + what + "; " + remedy);
        this.source = source;
        this.line = line;
        this.column = column;
        this.what = what;
        this.remedy = remedy;
    }

    /** The document's name. */
    public String source() {
        return source;
    }

    /** The line, from 1; 0 if the document as a whole is meant. */
    public int line() {
        return line;
    }

    /** The column, from 1; 0 if the document as a whole is meant. */
    public int column() {
        return column;
    }

    /** What was found. */
    public String what() {
        return what;
    }

    /** What is needed instead, or what to do. */
    public String remedy() {
        return remedy;
    }
}
