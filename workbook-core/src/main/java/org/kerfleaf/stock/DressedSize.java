package org.kerfleaf.stock;

import static org.kerfleaf.reason.Given.given;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;

/**
 * The size softwood lumber has once it is dried and planed on four sides, by the name it is sold under.
 *
 * <p>Source: NIST PS 20-20, American Softwood Lumber Standard, minimum dressed sizes (dry), as a rule; the rows of
 * secondary copies agree. Timbers with a side over 6 in nominal are left out because editions differ there.
 *
 * @param nominal the name, as sold: {@code 2x8}, {@code 5/4x6}
 * @param thickness the shorter side of the section
 * @param width the longer side of the section
 */
public record DressedSize(String nominal, Length thickness, Length width) {
    /** The standard behind these sizes and how sure they are. */
    public static final String SOURCE = "NIST PS 20-20, minimum dressed dry sizes (seen in copies)";

    private static final String RULE =
            "dressed dry: thickness 1 in less 1/4 in, 5/4 and 6/4 in less 1/4 in, 2 in and more less 1/2 in; width up to"
                    + " 6 in (boards 7 in) less 1/2 in, 8 to 16 in less 3/4 in";

    private static final Pattern NAME = Pattern.compile("(?:([1-6])|([56])/4)\\s*[x×]\\s*(\\d{1,2})");

    private static final int QUARTERS = 4;
    private static final int BOARDS_BELOW = 2 * QUARTERS;
    private static final int TIMBERS_FROM = 5 * QUARTERS;

    /** The dressed size of a nominal name: {@code 1x2}, {@code 2 x 8}, {@code 5/4x6}; empty if PS 20's rule does not reach it. */
    public static Optional<DressedSize> of(String nominal) {
        Matcher name = NAME.matcher(nominal.strip().toLowerCase(Locale.ROOT));
        if (!name.matches()) {
            return Optional.empty();
        }
        int quarters =
                name.group(1) != null ? Integer.parseInt(name.group(1)) * QUARTERS : Integer.parseInt(name.group(2));
        int wide = Integer.parseInt(name.group(3));
        Optional<Length> width = quarters <= wide * QUARTERS ? width(quarters, wide) : Optional.empty();
        return width.map(dressed -> new DressedSize(nominal.strip(), thickness(quarters), dressed));
    }

    private static Length thickness(int quarters) {
        int off = quarters < BOARDS_BELOW ? 16 : 32;
        return Length.ofSixtyFourths(quarters * 16L - off);
    }

    private static Optional<Length> width(int quartersThick, int wide) {
        boolean board = quartersThick < BOARDS_BELOW;
        boolean timber = quartersThick >= TIMBERS_FROM;
        if (wide >= 2 && wide <= (board ? 7 : 6)) {
            return Optional.of(Length.ofSixtyFourths(wide * 64L - 32));
        }
        return wide >= 8 && wide <= 16 && !timber
                ? Optional.of(Length.ofSixtyFourths(wide * 64L - 48))
                : Optional.empty();
    }

    /** The thickness with the rule it follows from. */
    public Figure<Length> thicknessFigure() {
        return new Figure<>(thickness, reason());
    }

    /** The width with the rule it follows from. */
    public Figure<Length> widthFigure() {
        return new Figure<>(width, reason());
    }

    private Reason reason() {
        return new Reason(RULE, List.of(given("sold as", nominal)), SOURCE);
    }
}
