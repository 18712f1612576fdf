package org.kerfleaf.kernel.cell;

/**
 * One live value in prose: what stands between <code>${</code> and <code>}</code>.
 *
 * @param ordinal which live value of the document, from 0
 * @param expression its Java text
 * @param line the line of the workbook file on which the expression begins, from 1
 */
public record ProseSource(int ordinal, String expression, int line) {
    public ProseSource {
        expression = expression.replace("\r\n", "\n").replace('\r', '\n');
    }
}
