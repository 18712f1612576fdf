package org.kerfleaf.samples;

import java.util.List;

/** The words that {@link Snippets} says, for a JShell in which no workbook runs: they keep what they are told and no more. */
public final class PlainWords {
    private PlainWords() {}

    public record Length(String said, List<Length> less) {
        public Length minus(Length one, Length other) {
            return new Length(said, List.of(one, other));
        }
    }

    public record Sheet(String name, Length thickness) {
        public Sheet soldAs(String thick) {
            return new Sheet(name, length(thick));
        }
    }

    public record Part(String name, Sheet of, Length across, Length up) {
        public Part wide(Length length) {
            return new Part(name, of, length, up);
        }

        public Part high(Length length) {
            return new Part(name, of, across, length);
        }
    }

    public record Placing(Part part) {}

    public static Length length(String said) {
        return new Length(said, List.of());
    }

    public static Sheet sheet(String name, String wide, String high) {
        return new Sheet(name + wide + high, length(""));
    }

    public static Part panel(String name, Sheet of) {
        return new Part(name, of, length(""), length(""));
    }

    public static Placing place(Part part) {
        return new Placing(part);
    }
}
