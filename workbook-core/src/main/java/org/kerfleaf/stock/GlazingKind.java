package org.kerfleaf.stock;

import static org.kerfleaf.reason.Given.given;

import java.util.Optional;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Figure;

/** What a pane is made of. */
public enum GlazingKind {
    /** Cast acrylic, also where only "acrylic" is said: 4.0e-5 for each °F. */
    ACRYLIC("acrylic", 4.0e-5, 1190, "sheet makers' glazing guides, ASTM D696 values (seen in copies)"),
    /** Extruded acrylic: the upper end of 4.1 to 4.4e-5 for each °F. */
    EXTRUDED_ACRYLIC(
            "extruded acrylic", 4.4e-5, 1190, "sheet makers' glazing guides, ASTM D696 values (seen in copies)"),
    /** Polycarbonate: 3.8e-5 for each °F. */
    POLYCARBONATE(
            "polycarbonate",
            3.8e-5,
            1200,
            "sheet makers' glazing guides (expansion seen in copies, density from memory)"),
    /** Glass that a cutter scores and snaps. */
    GLASS("glass", 0.5e-5, 2500, "soda-lime glass, 9e-6 for each °C and 2.5 kg/L (from memory)"),
    /** Toughened glass, made to size and never cut after. */
    TEMPERED_GLASS("tempered glass", 0.5e-5, 2500, "soda-lime glass, 9e-6 for each °C and 2.5 kg/L (from memory)"),
    /** Laminated safety glass. */
    LAMINATED_GLASS("laminated glass", 0.5e-5, 2500, "soda-lime glass, 9e-6 for each °C and 2.5 kg/L (from memory)");

    private final String words;
    private final Expansion expansion;
    private final Density density;
    private final String source;

    GlazingKind(String words, double perFahrenheit, double kilogramsPerCubicMetre, String source) {
        this.words = words;
        this.expansion = Expansion.ofPerFahrenheit(perFahrenheit);
        this.density = Density.ofKilogramsPerCubicMetre(kilogramsPerCubicMetre);
        this.source = source;
    }

    /** The kind a stock's name speaks of; empty if it speaks of none. */
    public static Optional<GlazingKind> named(String stock) {
        Words name = Words.of(stock);
        if (name.have("acrylic")) {
            return Optional.of(name.have("extruded") ? EXTRUDED_ACRYLIC : ACRYLIC);
        }
        if (name.have("polycarbonate")) {
            return Optional.of(POLYCARBONATE);
        }
        if (!name.have("glass")) {
            return Optional.empty();
        }
        boolean tempered = name.have("tempered") || name.have("toughened");
        return Optional.of(tempered ? TEMPERED_GLASS : name.have("laminated") ? LAMINATED_GLASS : GLASS);
    }

    public String words() {
        return words;
    }

    public boolean isPlastic() {
        return this == ACRYLIC || this == EXTRUDED_ACRYLIC || this == POLYCARBONATE;
    }

    /** How much it grows with warmth. */
    public Figure<Expansion> expansion() {
        return Figure.of(expansion, "thermal expansion of " + words, source, given("pane", words));
    }

    public Figure<Density> density() {
        return Figure.of(density, "density of " + words, source, given("pane", words));
    }

    /**
     * What damp air adds to its length: 0.3 % for acrylic at 80 % relative humidity, nothing for glass; empty for
     * polycarbonate, whose makers' figures were not seen.
     */
    public Optional<Figure<Ratio>> swelling() {
        if (this == POLYCARBONATE) {
            return Optional.empty();
        }
        double share = isPlastic() ? 0.003 : 0;
        return Optional.of(Figure.of(
                Ratio.of(share),
                isPlastic() ? "acrylic swells 0.3 % at 80 % relative humidity" : "glass does not swell",
                isPlastic() ? "a sheet maker's humidity table (seen in a copy)" : "from memory",
                given("pane", words)));
    }
}
