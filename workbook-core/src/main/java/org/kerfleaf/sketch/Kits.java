package org.kerfleaf.sketch;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.kerfleaf.measure.Ratio;

/**
 * How many kits are made in one go, a kit being everything for one piece: what is cut and bought is for all of them.
 *
 * @param many 1 or more
 * @param spare how many fasteners more than needed are bought: 0.05 for one in twenty
 * @group the work
 */
public record Kits(Origin origin, int many, Ratio spare) implements Declaration {
    private static final Pattern PER_CENT = Pattern.compile("(\\d{1,2}(?:\\.\\d+)?)\\s*%");

    /** So many fasteners more than needed, below 100 %; some are dropped. @example kits(25).spareFasteners("5 %") */
    public Kits spareFasteners(String share) {
        Matcher said = PER_CENT.matcher(share.strip());
        if (!said.matches()) {
            throw new SketchException(
                    "“%s” spare fasteners: a share such as \"5 %%\" would be right.".formatted(share));
        }
        return new Kits(origin, many, Ratio.of(Double.parseDouble(said.group(1)) / 100));
    }

    /** What {@code kits} says. @param many 1 or more */
    public static Kits of(Origin origin, int many) {
        return new Kits(origin, SketchRun.atLeastOne("Kits", many), Ratio.of(0));
    }
}
