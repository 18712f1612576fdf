package org.kerfleaf.export.spreadsheet;

import java.util.List;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.joda.money.Money;
import org.kerfleaf.measure.Length;

/** One row while it is being filled. What is not known is said in words, which sums leave out. */
final class Line {
    static final String NOT_KNOWN = "not known";

    private final Table table;
    private final XSSFRow row;
    private Look.Rule rule;

    Line(Table table, XSSFRow row, Look.Rule rule) {
        this.table = table;
        this.row = row;
        this.rule = rule;
        List<Column> columns = table.columns();
        for (int at = Column.firstUsed(columns); at <= Column.lastUsed(columns); at++) {
            boolean box = columns.get(at).key().equals("box") && rule == Look.Rule.ROW;
            table.leaf().cell(row, at, box ? Look.TICK_BOX : Look.TEXT.ruled(rule));
        }
    }

    /** Without a rule and not bold: a remark below the totals. */
    Line plain() {
        rule = Look.Rule.NONE;
        for (int at = 0; at < table.columns().size(); at++) {
            table.leaf().cell(row, at, Look.REMARK);
        }
        return this;
    }

    Line text(String key, String words) {
        return put(key, words, Look.TEXT);
    }

    Line strong(String key, String words) {
        return put(key, words, Look.TEXT.bold());
    }

    Line count(String key, long count) {
        return number(key, count, Look.NUMBER);
    }

    Line number(String key, double value, String format) {
        return number(key, value, Look.NUMBER.in(format));
    }

    /** A number the reader may change. */
    Line choice(String key, long count) {
        return number(key, count, Look.NUMBER.chalk());
    }

    Line length(String key, Length length) {
        return number(key, printed().number(length), printed().format(length));
    }

    /** A length as it is read off a tape, in lowest terms, heavy or light. */
    Line reads(String key, Length length) {
        return text(key, length.read(printed().style()).text());
    }

    Line money(String key, Money money) {
        return number(key, money.getAmount().doubleValue(), printed().moneyFormat());
    }

    /** A price, which the reader may change or fill in. */
    Line price(String key, Optional<Money> price) {
        Look look = Look.NUMBER.chalk().in(printed().moneyFormat());
        return price.isPresent() ? number(key, price.get().getAmount().doubleValue(), look) : put(key, NOT_KNOWN, look);
    }

    Line notKnown(String key) {
        return put(key, NOT_KNOWN, Look.NUMBER);
    }

    Line formula(String key, String formula, String format) {
        return formula(key, formula, Look.NUMBER.in(format));
    }

    /** A formula that adds up what is known of some cells; a sum of nothing known is not known either. */
    static String knownSum(String range) {
        return ifKnown(range, "SUM(%s)".formatted(range));
    }

    /** A formula that holds where any of some cells has a number. */
    static String ifKnown(String range, String formula) {
        return "IF(COUNT(%s)=0,\"%s\",%s)".formatted(range, NOT_KNOWN, formula);
    }

    Line moneyFormula(String key, String formula) {
        return formula(key, formula, printed().moneyFormat());
    }

    Line wordsFormula(String key, String formula) {
        return formula(key, formula, Look.TEXT);
    }

    private Line formula(String key, String formula, Look look) {
        table.leaf().cell(row, table.indexOf(key), dressed(look)).setCellFormula(table.inRow(formula, row.getRowNum()));
        return this;
    }

    /** Where the cell of that column stands, fixed: {@code $F$13}. */
    String at(String key) {
        return table.inRow("{" + key + "}", row.getRowNum()).replaceAll("(\\d+)$", "\\$$1");
    }

    private Line number(String key, double value, Look look) {
        table.leaf().cell(row, table.indexOf(key), dressed(look)).setCellValue(value);
        return this;
    }

    private Line put(String key, String words, Look look) {
        table.leaf().cell(row, table.indexOf(key), dressed(look)).setCellValue(words);
        return this;
    }

    private Look dressed(Look look) {
        return switch (rule) {
            case TOTAL -> look.total();
            case NONE -> look.unbroken();
            default -> look;
        };
    }

    private Printed printed() {
        return table.leaf().book().printed();
    }
}
