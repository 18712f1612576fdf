package org.kerfleaf.kernel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.kerfleaf.kernel.cell.CellProblem;
import org.kerfleaf.kernel.compile.CompiledUnit;
import org.kerfleaf.kernel.compile.CompiledWorkbook;
import org.kerfleaf.kernel.wire.ClassCode;
import org.kerfleaf.kernel.wire.Unit;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.commons.ClassRemapper;
import org.objectweb.asm.commons.Remapper;

/**
 * A compiled workbook without what a session numbers as it likes: classes are called by their unit, lines of a class's
 * source are places in the file.
 */
final class Normal {
    private Normal() {}

    /** The workbook in lines. */
    static List<String> of(CompiledWorkbook compiled) {
        Map<String, String> names = new LinkedHashMap<>();
        compiled.runnable().forEach(unit -> names.put(unit.className(), "unit" + unit.index()));
        List<String> lines = new ArrayList<>();
        for (CompiledUnit one : compiled.units()) {
            lines.add(one.called() + ", live " + one.live() + ": " + unit(one.unit(), names));
        }
        Map<String, Integer> classes = new TreeMap<>();
        for (ClassCode code : compiled.classes()) {
            CompiledUnit owner = compiled.owner(code.name()).orElseThrow();
            classes.put(named(code.name(), names), Arrays.hashCode(bytes(code.bytes(), names, owner)));
        }
        classes.forEach((name, digest) -> lines.add("bytecode of " + name + ": " + digest));
        compiled.refusals().forEach(refusal -> lines.add("refused: " + refusal));
        compiled.notes().forEach(note -> lines.add("note: " + note));
        return lines;
    }

    private static Unit unit(Unit unit, Map<String, String> names) {
        Optional<String> field = unit.field().map(Normal::unnumbered);
        return new Unit(
                unit.index(),
                names.get(unit.className()),
                names.get(unit.home()),
                unit.invoked(),
                unit.value(),
                field,
                unit.cell(),
                unit.line(),
                unit.step(),
                unit.needs());
    }

    // A value without a name, and what the compiler keeps of an enum for a switch: that name holds the enum's class.
    private static String unnumbered(String name) {
        return name.replaceFirst("^\\$\\d+$|^\\$SwitchMap.*", "\\$");
    }

    private static String named(String className, Map<String, String> names) {
        String plain = className.replaceFirst("^REPL[./]", "");
        int nested = plain.indexOf('$', "$JShell$".length());
        String outer = nested < 0 ? plain : plain.substring(0, nested);
        return names.getOrDefault("REPL." + outer, outer) + (nested < 0 ? "" : plain.substring(nested));
    }

    private static byte[] bytes(byte[] code, Map<String, String> names, CompiledUnit owner) {
        ClassWriter writer = new ClassWriter(0);
        ClassVisitor lines = new ClassVisitor(Opcodes.ASM9, writer) {
            @Override
            public void visitSource(String source, String debug) {
                // It is called like the class.
            }

            @Override
            public MethodVisitor visitMethod(
                    int access, String name, String descriptor, String signature, String[] exceptions) {
                MethodVisitor method = super.visitMethod(access, name, descriptor, signature, exceptions);
                return new MethodVisitor(Opcodes.ASM9, method) {
                    @Override
                    public void visitLineNumber(int line, Label start) {
                        CellProblem place = owner.problemInLine(line, "");
                        super.visitLineNumber(place.line() % 500 * 100 + Math.min(99, place.column()), start);
                    }
                };
            }
        };
        Remapper remapper = new Remapper(Opcodes.ASM9) {
            @Override
            public String map(String internalName) {
                return internalName.startsWith("REPL/") ? named(internalName, names) : internalName;
            }

            @Override
            public String mapFieldName(String className, String name, String descriptor) {
                return unnumbered(name);
            }
        };
        new ClassReader(code).accept(new ClassRemapper(lines, remapper), 0);
        return writer.toByteArray();
    }
}
