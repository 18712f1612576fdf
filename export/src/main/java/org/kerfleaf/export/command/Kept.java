package org.kerfleaf.export.command;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;

/** Keeps what is made in a file. It is made whole before the file is touched. */
final class Kept {
    private Kept() {}

    /**
     * Writes a file and says so.
     *
     * @param typed where to, a file or a folder; null for the bench's folder
     * @param usualName the file's name if only a folder is known
     */
    static void keep(Bench bench, Path workbook, String typed, String usualName, Consumer<OutputStream> maker) {
        Path target = typed == null ? bench.folder().resolve(usualName) : WorkbookFile.path(bench.folder(), typed);
        String shown = typed == null ? usualName : typed;
        if (Files.isDirectory(target)) {
            target = target.resolve(usualName);
            shown = typed == null
                    ? usualName
                    : Path.of(typed).resolve(usualName).toString();
        }
        refuseUnlessWritable(workbook, target, shown);
        ByteArrayOutputStream made = new ByteArrayOutputStream();
        maker.accept(made);
        boolean replaced = Files.exists(target);
        write(target, shown, made.toByteArray());
        bench.out()
                .println(
                        replaced
                                ? "Kept %s in place of the one before.".formatted(shown)
                                : "Kept %s.".formatted(shown));
    }

    private static void refuseUnlessWritable(Path workbook, Path target, String shown) {
        if (target.toAbsolutePath().normalize().equals(workbook.toAbsolutePath().normalize())) {
            throw new Refused("--out “%s” is the workbook itself. Another name would be right.".formatted(shown));
        }
        Path parent = target.toAbsolutePath().getParent();
        if (!Files.isDirectory(parent)) {
            throw new Refused("“%s” cannot be kept: there is no folder “%s”. A folder that is there would be right."
                    .formatted(shown, parent.getFileName()));
        }
        if (Files.isDirectory(target)) {
            throw new Refused(
                    "“%s” cannot be kept: a folder has that name. Another name would be right.".formatted(shown));
        }
    }

    private static void write(Path target, String shown, byte[] bytes) {
        try {
            Files.write(target, bytes);
        } catch (IOException failed) {
            throw refused(shown, failed);
        }
    }

    /** Why something cannot be kept, in words. */
    static Refused refused(String shown, IOException failed) {
        if (failed instanceof AccessDeniedException) {
            return new Refused("“%s” cannot be kept: you may not write there. Another place can be said with --out."
                    .formatted(shown));
        }
        String why = failed.getMessage();
        if (failed instanceof FileSystemException known) {
            why = known.getReason() == null ? "the file cannot be written" : known.getReason();
        }
        return new Refused("“%s” cannot be kept: %s. Another place can be said with --out.".formatted(shown, why));
    }
}
