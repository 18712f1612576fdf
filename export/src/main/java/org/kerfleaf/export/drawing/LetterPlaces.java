package org.kerfleaf.export.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Where the letters of parts stand: each on white paper, with a leader that ends in a dot on the roomiest piece of its part that
 * is seen. Small pieces choose first. A place costs the leader's length and 10 mm for each other part it runs over; leaders do not
 * cross, and none runs through a letter or a dot. A part without a visible piece is not pointed at.
 */
final class LetterPlaces {
    /** A piece must leave so much room round the dot, in millimetres of paper. */
    private static final double LEAST_ROOM = 0.5;

    /** Half the circle and the air round it. */
    private static final double CLEAR = Signs.LETTER / 2 + 0.8;

    private static final double SHORTEST = 7;
    private static final double LONGEST = 70;
    private static final double STEP = 1.5;
    private static final double FOREIGN = 10;
    private static final int DIRECTIONS = 24;
    private static final int DOTS = 20;

    /** Turned a little, so that no leader runs along an edge of the usual views. */
    private static final double FIRST_DIRECTION = 3.5;

    /** A letter in its circle and the dot it points at, in millimetres of the drawing. */
    record Place(String letter, double x, double y, double dotX, double dotY) {
        double length() {
            return StrictMath.hypot(x - dotX, y - dotY);
        }
    }

    private record Wish(String letter, double room, List<Integer> dots) {}

    private final FaceMask mask;
    private final String[] letters;
    private final List<Place> places = new ArrayList<>();

    private LetterPlaces(FaceMask mask, String[] letters) {
        this.mask = mask;
        this.letters = letters;
    }

    /**
     * @param letters by the mask's numbers of faces; 0 is the paper
     */
    static List<Place> of(FaceMask mask, String[] letters) {
        LetterPlaces places = new LetterPlaces(mask, letters);
        for (Wish wish : places.wishes()) {
            places.settle(wish);
        }
        places.places.sort(Comparator.comparing(Place::letter));
        return List.copyOf(places.places);
    }

    private List<Wish> wishes() {
        Map<String, Double> rooms = new TreeMap<>();
        for (int i = 0; i < mask.size(); i++) {
            String letter = letters[mask.face(i)];
            if (!letter.isEmpty()) {
                rooms.merge(letter, mask.room(i), Math::max);
            }
        }
        Map<String, List<Integer>> roomy = new TreeMap<>();
        for (int i = 0; i < mask.size(); i++) {
            String letter = letters[mask.face(i)];
            if (!letter.isEmpty() && mask.room(i) >= Math.min(0.85 * rooms.get(letter), 2.5)) {
                roomy.computeIfAbsent(letter, key -> new ArrayList<>()).add(i);
            }
        }
        List<Wish> wishes = new ArrayList<>();
        rooms.forEach((letter, room) -> {
            if (room >= LEAST_ROOM) {
                wishes.add(new Wish(letter, room, thinned(roomy.get(letter))));
            }
        });
        wishes.sort(Comparator.comparingDouble(Wish::room).thenComparing(Wish::letter));
        return wishes;
    }

    private static List<Integer> thinned(List<Integer> cells) {
        int count = Math.min(DOTS, cells.size());
        List<Integer> few = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            few.add(cells.get((int) ((i + 0.5) * cells.size() / count)));
        }
        return few;
    }

    private void settle(Wish wish) {
        Place best = null;
        double least = Double.POSITIVE_INFINITY;
        for (int dot : wish.dots()) {
            double dotX = mask.x(dot);
            double dotY = mask.y(dot);
            for (int d = 0; d < DIRECTIONS; d++) {
                double angle = StrictMath.toRadians(FIRST_DIRECTION + 360.0 * d / DIRECTIONS);
                double dx = StrictMath.cos(angle);
                double dy = StrictMath.sin(angle);
                for (double r = SHORTEST; r <= LONGEST && r < least; r += STEP) {
                    Place place = new Place(wish.letter(), dotX + r * dx, dotY + r * dy, dotX, dotY);
                    if (!isWhite(place.x(), place.y())) {
                        continue;
                    }
                    double cost = r + FOREIGN * foreign(place);
                    if (cost < least && isFree(place)) {
                        best = place;
                        least = cost;
                    }
                }
            }
        }
        if (best != null) {
            places.add(best);
        }
    }

    private boolean isWhite(double x, double y) {
        int cell = mask.cell(x, y);
        return cell >= 0 && mask.face(cell) == 0 && mask.room(cell) >= CLEAR;
    }

    /** How many other parts the leader runs over. */
    private int foreign(Place place) {
        int count = 0;
        String last = place.letter();
        int steps = (int) Math.ceil(place.length() / 0.5);
        for (int i = 1; i < steps; i++) {
            double t = (double) i / steps;
            int cell = mask.cell(
                    place.dotX() + t * (place.x() - place.dotX()), place.dotY() + t * (place.y() - place.dotY()));
            int face = cell < 0 ? 0 : mask.face(cell);
            // A piece nobody points at is foreign as well.
            String here = face == 0 ? "paper" : letters[face].isEmpty() ? "none" : letters[face];
            if (!here.equals(last) && face != 0 && !here.equals(place.letter())) {
                count++;
            }
            last = here;
        }
        return count;
    }

    private boolean isFree(Place place) {
        for (Place other : places) {
            boolean apart = StrictMath.hypot(place.x() - other.x(), place.y() - other.y()) >= 2 * CLEAR - 0.4
                    && distance(other.x(), other.y(), place) >= CLEAR
                    && distance(place.x(), place.y(), other) >= CLEAR
                    && distance(other.dotX(), other.dotY(), place) >= 1.6
                    && distance(place.dotX(), place.dotY(), other) >= 1.6
                    && !cross(place, other);
            if (!apart) {
                return false;
            }
        }
        return true;
    }

    private static double distance(double x, double y, Place leader) {
        return java.awt.geom.Line2D.ptSegDist(leader.x(), leader.y(), leader.dotX(), leader.dotY(), x, y);
    }

    private static boolean cross(Place a, Place b) {
        return java.awt.geom.Line2D.linesIntersect(a.x(), a.y(), a.dotX(), a.dotY(), b.x(), b.y(), b.dotX(), b.dotY());
    }
}
