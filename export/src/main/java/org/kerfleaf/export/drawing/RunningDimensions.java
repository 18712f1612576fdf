package org.kerfleaf.export.drawing;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.measure.Length;

/**
 * Running dimensions from one origin circle, the tape hooked once (ISO 129-1): an arrow at each place, its value at the end of its
 * extension line, moved aside where two would touch.
 *
 * <p>Along is rising from the origin, in millimetres of paper; away is how far off the part.
 */
final class RunningDimensions {
    static final Style VALUE = new Style(Face.LABEL, 9, Ink.BLACK);

    private static final double LINE_AT = 5;
    private static final double TURN_AT = 6.6;
    private static final double VALUE_AT = 9.6;
    private static final double APART = 3.9;
    private static final double CIRCLE = 1.1;
    private static final double ARROW = 1.9;

    private final List<Double> places;
    private final List<Line> values;
    private final Spread spread;

    /** A value set down. */
    record Set(Line value, double along, double away) {}

    /** @param stations from the origin, in millimetres of the part, in rising order and without the origin itself */
    RunningDimensions(List<Double> stations, Scale scale, Lettering words) {
        places = stations.stream().map(s -> s / scale.times()).toList();
        values = stations.stream()
                .map(s -> words.length(Length.ofMillimetres(s), VALUE).line())
                .toList();
        double[] wanted = places.stream().mapToDouble(Double::doubleValue).toArray();
        double last = places.isEmpty() ? 0 : places.get(places.size() - 1);
        spread = Spread.of(wanted, Math.min(APART, last), last + 2 * APART, APART);
    }

    /** Where each value stands. */
    List<Set> values() {
        List<Set> set = new ArrayList<>();
        double row = widest() + 2;
        for (int i = 0; i < places.size(); i++) {
            set.add(new Set(values.get(i), spread.places()[i], VALUE_AT + row * (i % spread.rows())));
        }
        return set;
    }

    private double widest() {
        return values.stream().mapToDouble(Line::width).max().orElse(0);
    }

    /** How much room all of it takes off the part. */
    double depth() {
        return places.isEmpty() ? 0 : VALUE_AT + spread.rows() * (widest() + 2) - 2;
    }

    /** How far it reaches along the part. */
    double end() {
        int n = places.size();
        return n == 0 ? 0 : Math.max(places.get(n - 1), spread.places()[n - 1]) + APART / 2;
    }

    /** Where there is no room for an arrow head before the last one, the extension line says enough. */
    private boolean hasArrow(int i) {
        return places.get(i) - (i == 0 ? 0 : places.get(i - 1)) > (i == 0 ? CIRCLE + ARROW : ARROW);
    }

    /** Below a part whose lower left corner is there; values read from the right. */
    void paintBelow(Ink ink, double left, double bottom) {
        if (places.isEmpty()) {
            return;
        }
        double y = bottom + LINE_AT;
        ink.line(left, y, left + places.get(places.size() - 1), y, Ink.FINE);
        ink.line(left, bottom + 1, left, y, Ink.FINE);
        ink.fill(Ink.circle(left, y, CIRCLE), Ink.WHITE);
        ink.stroke(Ink.circle(left, y, CIRCLE), Ink.BLACK, Ink.NARROW);
        List<Set> set = values();
        for (int i = 0; i < places.size(); i++) {
            double at = left + places.get(i);
            double moved = left + set.get(i).along();
            double away = bottom + set.get(i).away();
            ink.stroke(
                    Ink.open(at, bottom + 1, at, bottom + TURN_AT, moved, bottom + VALUE_AT - 1.4, moved, away - 0.6),
                    Ink.BLACK,
                    Ink.FINE);
            if (hasArrow(i)) {
                Signs.arrow(ink, at, y, 1, 0);
            }
            Line value = set.get(i).value();
            ink.turned(moved + VALUE.capital() / 2, away + value.width(), () -> ink.text(value, 0, 0));
        }
    }

    /** Left of a part whose lower left corner is there. */
    void paintBeside(Ink ink, double left, double bottom) {
        if (places.isEmpty()) {
            return;
        }
        double x = left - LINE_AT;
        ink.line(x, bottom, x, bottom - places.get(places.size() - 1), Ink.FINE);
        ink.line(left - 1, bottom, x, bottom, Ink.FINE);
        ink.fill(Ink.circle(x, bottom, CIRCLE), Ink.WHITE);
        ink.stroke(Ink.circle(x, bottom, CIRCLE), Ink.BLACK, Ink.NARROW);
        List<Set> set = values();
        for (int i = 0; i < places.size(); i++) {
            double at = bottom - places.get(i);
            double moved = bottom - set.get(i).along();
            double away = left - set.get(i).away();
            ink.stroke(
                    Ink.open(left - 1, at, left - TURN_AT, at, left - VALUE_AT + 1.4, moved, away + 0.6, moved),
                    Ink.BLACK,
                    Ink.FINE);
            if (hasArrow(i)) {
                Signs.arrow(ink, x, at, 0, -1);
            }
            ink.flushRight(set.get(i).value(), away, moved + VALUE.capital() / 2);
        }
    }
}
