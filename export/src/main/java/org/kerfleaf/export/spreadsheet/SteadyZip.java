package org.kerfleaf.export.spreadsheet;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Packs an archive again with the same time on every entry: the times are all that differs from one run to the next. */
final class SteadyZip {
    /** The first day a zip archive can name. */
    private static final LocalDateTime FIRST_DAY = LocalDateTime.of(1980, 1, 1, 0, 0);

    private SteadyZip() {}

    static void rewrite(byte[] archive, OutputStream out) throws IOException {
        ZipOutputStream packed = new ZipOutputStream(out);
        try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(archive))) {
            for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
                ZipEntry same = new ZipEntry(entry.getName());
                same.setTimeLocal(FIRST_DAY);
                packed.putNextEntry(same);
                from.transferTo(packed);
                packed.closeEntry();
            }
        }
        packed.finish();
    }
}
