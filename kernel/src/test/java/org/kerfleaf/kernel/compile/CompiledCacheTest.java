package org.kerfleaf.kernel.compile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.kerfleaf.kernel.cell.CellSource;
import org.kerfleaf.kernel.cell.ProseSource;
import org.kerfleaf.kernel.cell.WorkbookSource;

/** What was compiled once is not compiled again, and nothing in the folder can make a workbook come out otherwise. */
class CompiledCacheTest {
    private static final String CELL =
            "int a = 1;\nrecord Leg(int n) {}\nvar leg = new Leg(a);\n\nint b = leg.n() / 0;";

    @TempDir
    private Path folder;

    private static WorkbookSource book(String cell, int line) {
        return new WorkbookSource(
                "A box",
                List.of(),
                List.of(new CellSource(0, cell, line, 2)),
                List.of(new ProseSource(0, "a + b", line + 9)));
    }

    private CompiledWorkbook compileOnce(WorkbookSource source) {
        try (CellCompiler compiler = new CellCompiler(CompiledCache.in(folder))) {
            return compiler.compile(source);
        }
    }

    private List<Path> entries() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }

    private static void assertSame(CompiledWorkbook one, CompiledWorkbook other) {
        assertThat(one).usingRecursiveComparison().isEqualTo(other);
    }

    @Test
    void compile_openedAgain_startsNoCompilerAndGivesTheSame() {
        CompiledWorkbook first = compileOnce(book(CELL, 3));
        try (CellCompiler compiler = new CellCompiler(CompiledCache.in(folder))) {
            CompiledWorkbook again = compiler.compile(book(CELL, 3));

            assertThat(first.refusals()).isEmpty();
            assertThat(compiler.isStarted()).isFalse();
            assertSame(again, first);
        }
    }

    @Test
    void compile_onlyProseChanged_findsItInItsNewPlace() {
        compileOnce(book(CELL, 3));
        CompiledWorkbook moved;
        try (CellCompiler compiler = new CellCompiler(CompiledCache.in(folder))) {
            moved = compiler.compile(book(CELL, 30));
            assertThat(compiler.isStarted()).isFalse();
        }
        try (CellCompiler fresh = new CellCompiler()) {
            assertSame(moved, fresh.compile(book(CELL, 30)));
        }
    }

    @Test
    void compile_editedAfterItWasFound_compilesAndKeepsTheNewText() throws IOException {
        compileOnce(book(CELL, 3));
        try (CellCompiler compiler = new CellCompiler(CompiledCache.in(folder))) {
            compiler.compile(book(CELL, 3));
            compiler.compile(book(CELL.replace("a = 1", "a = 2"), 3));
            compiler.compile(book(CELL.replace("a = 1", "a = 3"), 3));
        }

        assertThat(entries()).hasSize(3);
        try (CellCompiler compiler = new CellCompiler(CompiledCache.in(folder))) {
            compiler.compile(book(CELL.replace("a = 1", "a = 3"), 3));
            assertThat(compiler.isStarted()).isFalse();
        }
    }

    @Test
    void expectEdits_afterItWasFound_compilesSoThatAnEditCostsAnEdit() {
        compileOnce(book(CELL, 3));
        WorkbookSource edited = book(CELL.replace("leg.n() / 0", "leg.n() + 1"), 3);
        try (CellCompiler compiler = new CellCompiler(CompiledCache.in(folder))) {
            CompiledWorkbook found = compiler.compile(book(CELL, 3));
            compiler.expectEdits();
            assertThat(compiler.compile(book(CELL, 3))).isSameAs(found);
            int all = compiler.evaluations();
            CompiledWorkbook after = compiler.compile(edited);

            assertThat(all).isEqualTo(5);
            assertThat(compiler.evaluations() - all).as("the line edited").isEqualTo(1);
            try (CellCompiler fresh = new CellCompiler()) {
                assertSame(after, fresh.compile(edited));
            }
        }
    }

    @Test
    void compile_somethingWrong_isNotKept() {
        compileOnce(book("int a = ;", 3));
        compileOnce(book("for (;;) { panel(\"P\", (Sheet) null); }", 3));

        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void compile_entryBrokenAnywhere_compiles() throws IOException {
        CompiledWorkbook first = compileOnce(book(CELL, 3));
        Path entry = entries().get(0);
        byte[] whole = Files.readAllBytes(entry);
        for (int length : new int[] {0, 5, 40, whole.length - 1}) {
            Files.write(entry, java.util.Arrays.copyOf(whole, length));
            assertSame(compileOnce(book(CELL, 3)), first);
        }
        for (int at : new int[] {0, 33, whole.length / 2, whole.length - 1}) {
            byte[] changed = whole.clone();
            changed[at] ^= 1;
            Files.write(entry, changed);
            assertSame(compileOnce(book(CELL, 3)), first);
            assertThat(entry).hasBinaryContent(whole);
        }
    }

    @Test
    void of_anythingElseThanBefore_isAnotherEntry() {
        List<String> keys = new ArrayList<>();
        for (String cell : List.of(CELL, CELL + " ", CELL.replace("1", "2"))) {
            keys.add(CacheKey.of(book(cell, 3)));
        }
        WorkbookSource plain = book(CELL, 3);
        keys.add(CacheKey.of(new WorkbookSource("A box", List.of(), plain.cells(), List.of())));
        keys.add(CacheKey.of(
                new WorkbookSource("A box", List.of(), List.of(new CellSource(0, CELL, 3, 1)), plain.liveValues())));

        assertThat(keys).doesNotHaveDuplicates();
        assertThat(CacheKey.of(book(CELL, 30))).isEqualTo(keys.get(0));
    }

    @Test
    void keep_moreThanFits_dropsWhatWasNotUsedForLongest() throws IOException {
        for (int i = 0; i < 3; i++) {
            Path old = folder.resolve("old" + i + ".compiled");
            try (RandomAccessFile file = new RandomAccessFile(old.toFile(), "rw")) {
                file.setLength(CompiledCache.MOST_BYTES / 2 - 100_000);
            }
            Files.setLastModifiedTime(old, FileTime.fromMillis(1_000_000L * (i + 1)));
        }
        compileOnce(book(CELL, 3));

        assertThat(folder.resolve("old0.compiled")).doesNotExist();
        assertThat(entries()).hasSize(3);
    }

    @Test
    void keep_folderThatCannotBe_compilesAllTheSame() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "");
        try (CellCompiler compiler = new CellCompiler(CompiledCache.in(file.resolve("in it")))) {
            assertThat(compiler.compile(book(CELL, 3)).refusals()).isEmpty();
        }
    }

    @Test
    void find_whileOthersKeep_givesAllOrNothing() throws Exception {
        CompiledWorkbook compiled = compileOnce(book(CELL, 3));
        CompiledCache cache = CompiledCache.in(folder);
        ExecutorService four = Executors.newFixedThreadPool(4);
        try {
            List<Callable<Boolean>> work = new ArrayList<>();
            for (int i = 0; i < 200; i++) {
                work.add(() -> {
                    cache.keep(book(CELL, 3), compiled);
                    return cache.find(book(CELL, 3)).orElseThrow().units().size()
                            == compiled.units().size();
                });
            }
            for (Future<Boolean> one : four.invokeAll(work)) {
                assertThat(one.get()).isTrue();
            }
        } finally {
            four.shutdownNow();
        }
        assertThat(entries()).hasSize(1);
    }
}
