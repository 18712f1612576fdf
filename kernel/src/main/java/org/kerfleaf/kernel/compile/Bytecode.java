package org.kerfleaf.kernel.compile;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * What the bytecode of one class touches of other pieces.
 *
 * @param touches the outermost classes of pieces that it names anywhere, its own included
 * @param writes values of other pieces that it writes
 * @param reads values of other pieces that it reads
 * @param dropped things of the vocabulary that it makes and does not keep
 * @param runs whether it has something to invoke
 */
record Bytecode(Set<String> touches, List<Access> writes, List<Access> reads, List<Dropped> dropped, boolean runs) {
    /** The method that does what a piece says. */
    static final String DO_IT = "do_it$";

    private static final Pattern PIECE_CLASS = Pattern.compile("REPL/(\\$JShell\\$\\w+)");

    /** A field of another class that is touched in a line of the class's source. */
    record Access(String className, String field, int line) {}

    /** A type whose value is thrown away in a line of the class's source. */
    record Dropped(Class<?> type, int line) {}

    static Bytecode of(byte[] bytes) {
        ClassReader reader = new ClassReader(bytes);
        Scan scan = new Scan(outermost(reader.getClassName().replace('/', '.')));
        reader.accept(scan, ClassReader.SKIP_FRAMES);
        return new Bytecode(named(reader, bytes), scan.writes, scan.reads, scan.dropped, scan.runs);
    }

    /** The class of the piece that a class belongs to: {@code REPL.$JShell$3} for {@code REPL.$JShell$3$Leg}. */
    static String outermost(String className) {
        Matcher match = PIECE_CLASS.matcher(className.replace('.', '/'));
        return match.lookingAt() ? "REPL." + match.group(1) : className;
    }

    // Every text of the constant pool: descriptors, signatures and inner classes included, where an inlined constant or
    // a
    // generic type leaves its only trace.
    private static Set<String> named(ClassReader reader, byte[] bytes) {
        Set<String> found = new TreeSet<>();
        for (int i = 1; i < reader.getItemCount(); i++) {
            int at = reader.getItem(i);
            if (at > 0 && reader.readByte(at - 1) == 1) {
                found.addAll(
                        pieceClasses(new String(bytes, at + 2, reader.readUnsignedShort(at), StandardCharsets.UTF_8)));
            }
        }
        return found;
    }

    /** The outermost classes of pieces that a descriptor, a signature or a name speaks of. */
    static Set<String> pieceClasses(String text) {
        Set<String> found = new TreeSet<>();
        if (text.contains("REPL/")) {
            Matcher match = PIECE_CLASS.matcher(text);
            while (match.find()) {
                found.add("REPL." + match.group(1));
            }
        }
        return found;
    }

    private static final class Scan extends ClassVisitor {
        private final String own;
        private final List<Access> writes = new ArrayList<>();
        private final List<Access> reads = new ArrayList<>();
        private final List<Dropped> dropped = new ArrayList<>();
        private boolean runs;

        Scan(String own) {
            super(Opcodes.ASM9);
            this.own = own;
        }

        @Override
        public MethodVisitor visitMethod(
                int access, String name, String descriptor, String signature, String[] exceptions) {
            runs |= name.equals(DO_IT);
            return new Body();
        }

        private final class Body extends MethodVisitor {
            private int line;
            private String made;

            Body() {
                super(Opcodes.ASM9);
            }

            @Override
            public void visitLineNumber(int number, Label start) {
                line = number;
            }

            @Override
            public void visitFieldInsn(int opcode, String owner, String name, String descriptor) {
                made = null;
                String className = owner.replace('/', '.');
                boolean value =
                        className.startsWith("REPL.") && outermost(className).equals(className);
                if (value && !className.equals(own)) {
                    if (opcode == Opcodes.PUTSTATIC) {
                        writes.add(new Access(className, name, line));
                    } else if (opcode == Opcodes.GETSTATIC) {
                        reads.add(new Access(className, name, line));
                    }
                }
            }

            @Override
            public void visitMethodInsn(int opcode, String owner, String name, String descriptor, boolean itf) {
                made = Type.getReturnType(descriptor).getClassName();
            }

            @Override
            public void visitInsn(int opcode) {
                if (opcode == Opcodes.POP && made != null && made.startsWith("org.kerfleaf.sketch.")) {
                    Declarations.find(made).ifPresent(type -> dropped.add(new Dropped(type, line)));
                }
                made = null;
            }

            @Override
            public void visitVarInsn(int opcode, int variable) {
                made = null;
            }

            @Override
            public void visitTypeInsn(int opcode, String type) {
                made = null;
            }
        }
    }
}
