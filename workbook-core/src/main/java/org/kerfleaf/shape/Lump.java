package org.kerfleaf.shape;

/**
 * An area or a volume and its middle; they add up.
 *
 * @param size mm² or mm³; negative for what is taken away
 * @param first its first moment: size times centre
 */
record Lump(double size, Vector first) {
    static final Lump NONE = new Lump(0, Vector.ZERO);

    static Lump at(double size, Vector centre) {
        return new Lump(size, centre.times(size));
    }

    Lump plus(Lump other) {
        return new Lump(size + other.size, first.plus(other.first));
    }

    Lump minus(Lump other) {
        return new Lump(size - other.size, first.minus(other.first));
    }

    Vector centre() {
        return first.times(1 / size);
    }
}
