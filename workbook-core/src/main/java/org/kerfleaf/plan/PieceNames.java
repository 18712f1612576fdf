package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.kerfleaf.shape.Vector;

/** Tells pieces of one part from each other: by number, and by where they stand in the build. */
final class PieceNames {
    /** Middles nearer than this stand in one place along an axis, in millimetres. */
    private static final double SAME = 1;

    private final Bodies bodies;

    PieceNames(Bodies bodies) {
        this.bodies = bodies;
    }

    private record Line(ToDoubleFunction<Vector> along, String low, String high, String from) {
        /** The places along this line, in order. */
        List<Double> places(List<Vector> middles) {
            List<Double> places = new ArrayList<>();
            middles.stream().mapToDouble(along).sorted().forEach(at -> {
                if (places.isEmpty() || at - places.get(places.size() - 1) > SAME) {
                    places.add(at);
                }
            });
            return places;
        }

        String word(Vector middle, List<Double> places) {
            int at = 0;
            while (at + 1 < places.size() && along.applyAsDouble(middle) > places.get(at) + SAME) {
                at++;
            }
            if (places.size() > 3) {
                return "No. " + (at + 1) + " from " + from;
            }
            return at == 0 ? low : at == places.size() - 1 ? high : "middle";
        }
    }

    private static final Line UP = new Line(Vector::z, "lower", "upper", "below");
    private static final Line DEEP = new Line(Vector::y, "front", "back", "the front");
    private static final Line WIDE = new Line(Vector::x, "left", "right", "the left");

    /** All pieces of a part that have a solid, in the order of placing. */
    List<Piece> equals(String part) {
        return bodies.all().keySet().stream().filter(p -> p.part().equals(part)).toList();
    }

    /** Which of its part's pieces it is, from 1. */
    int number(Piece piece) {
        return equals(piece.part()).indexOf(piece) + 1;
    }

    /** {@code left}, {@code upper}, {@code front left}; empty for a piece that is the only one. */
    String word(Piece piece) {
        List<Vector> middles = equals(piece.part()).stream().map(this::middle).toList();
        if (middles.size() < 2) {
            return "";
        }
        List<String> words = new ArrayList<>();
        for (Line line : List.of(UP, DEEP, WIDE)) {
            List<Double> places = line.places(middles);
            if (places.size() == middles.size()) {
                return line.word(middle(piece), places);
            }
            if (places.size() > 1) {
                words.add(line.word(middle(piece), places));
            }
        }
        return words.isEmpty() ? "No. " + number(piece) : String.join(" ", words);
    }

    private Vector middle(Piece piece) {
        return bodies.of(piece).bounds().middle();
    }
}
