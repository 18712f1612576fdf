package org.kerfleaf.kernel.compile;

/** One class as it came from the compiler, read once. */
final class CellClass {
    private final byte[] bytes;
    private Bytecode code;
    private ClassShape shape;

    CellClass(byte[] bytes) {
        this.bytes = bytes;
    }

    byte[] bytes() {
        return bytes;
    }

    Bytecode code() {
        if (code == null) {
            code = Bytecode.of(bytes);
        }
        return code;
    }

    ClassShape shape() {
        if (shape == null) {
            shape = ClassShape.of(bytes);
        }
        return shape;
    }
}
