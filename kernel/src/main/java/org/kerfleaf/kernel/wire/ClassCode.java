package org.kerfleaf.kernel.wire;

/** The bytecode of one class. */
public record ClassCode(String name, byte[] bytes) {}
