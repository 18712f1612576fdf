package org.kerfleaf.export.command;

final class Main {
    private Main() {}
}
