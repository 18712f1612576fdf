package org.kerfleaf.export.command;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which workbooks their owner has allowed to reach for more than the words: a file {@code allowed} in a folder of the user's
 * own, one line for each, the hash of what its cells say and, for whoever reads the file, where the workbook lay. What counts
 * is the hash. A file that cannot be read allows nothing and is told, so that nothing ever runs by mistake.
 */
final class Allowances {
    private static final Pattern LINE = Pattern.compile("([0-9a-f]{64}) (.+)");

    private final Path folder;

    /** @param folder where the file is; it need not be there yet */
    Allowances(Path folder) {
        this.folder = folder;
    }

    private record Allowance(String content, String place) {
        String line() {
            return content + " " + place;
        }
    }

    /** Whether what these cells say is allowed. @throws Refused if the file cannot be read, or is not as it was written */
    boolean has(String content) {
        return read().stream().anyMatch(one -> one.content().equals(content));
    }

    /** Allows it. @throws Refused if that cannot be kept */
    void allow(String content, Path workbook) {
        List<Allowance> all = new ArrayList<>(read());
        all.removeIf(one -> one.content().equals(content));
        all.add(new Allowance(content, place(workbook)));
        write(all);
    }

    /**
     * Takes back what was allowed for these cells, and for whatever this workbook said before.
     *
     * @return whether there was anything
     * @throws Refused if that cannot be kept
     */
    boolean forget(String content, Path workbook) {
        List<Allowance> all = new ArrayList<>(read());
        boolean was =
                all.removeIf(one -> one.content().equals(content) || one.place().equals(place(workbook)));
        if (was) {
            write(all);
        }
        return was;
    }

    private static String place(Path workbook) {
        return workbook.toAbsolutePath().normalize().toString().replaceAll("\\R", " ");
    }

    private Path file() {
        return folder.resolve("allowed");
    }

    private List<Allowance> read() {
        List<Allowance> all = new ArrayList<>();
        try {
            for (String line : Files.readAllLines(file(), StandardCharsets.UTF_8)) {
                Matcher match = LINE.matcher(line);
                if (!match.matches()) {
                    throw unreadable(
                            "line %d, “%s”, is not as it was written".formatted(all.size() + 1, shortened(line)));
                }
                all.add(new Allowance(match.group(1), match.group(2)));
            }
        } catch (NoSuchFileException nothingYet) {
            return List.of();
        } catch (CharacterCodingException noText) {
            throw unreadable("it is no text");
        } catch (IOException failed) {
            throw unreadable(why(failed));
        }
        return all;
    }

    private static String shortened(String line) {
        return line.length() > 40 ? line.substring(0, 40) + "…" : line;
    }

    private Refused unreadable(String why) {
        return new Refused(
                "What was allowed cannot be read from “%s”: %s. Nothing that reaches for more than the words runs until that file is mended or deleted."
                        .formatted(file(), why));
    }

    // Beside it first, then in its place: whoever reads it meanwhile finds the old or the new, never half of it.
    private void write(List<Allowance> all) {
        try {
            Files.createDirectories(folder);
            Path beside = Files.createTempFile(folder, "allowed", ".new");
            try {
                Files.write(beside, all.stream().map(Allowance::line).toList(), StandardCharsets.UTF_8);
                Files.move(beside, file(), StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException failed) {
            throw new Refused("This cannot be kept in “%s”: %s. What was allowed before is unchanged."
                    .formatted(folder, why(failed)));
        }
    }

    private static String why(IOException failed) {
        if (failed instanceof AccessDeniedException) {
            return "you may not do that there";
        }
        if (failed instanceof FileSystemException known && known.getReason() != null) {
            return known.getReason();
        }
        return failed instanceof FileSystemException ? "something else is in the way" : failed.getMessage();
    }
}
