package org.kerfleaf.kernel.help;

import com.sun.source.tree.BlockTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ErroneousTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.LambdaExpressionTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.Modifier;
import javax.lang.model.element.TypeElement;
import javax.lang.model.element.VariableElement;
import javax.lang.model.type.ArrayType;
import javax.lang.model.type.DeclaredType;
import javax.lang.model.type.ExecutableType;
import javax.lang.model.type.TypeKind;
import javax.lang.model.type.TypeMirror;
import org.kerfleaf.words.Words;

/** A scaffold as javac understands it: what can stand at its mark, and what is wanted there. */
final class Scene {
    private final JavacTask task;
    private final Trees trees;
    private final CompilationUnitTree unit;
    private final Optional<TreePath> mark;

    private Scene(JavacTask task) throws IOException {
        this.task = task;
        trees = Trees.instance(task);
        unit = task.parse().iterator().next();
        task.analyze();
        MarkFinder finder = new MarkFinder();
        finder.scan(unit, null);
        mark = Optional.ofNullable(finder.found);
    }

    static Scene of(JavacTask task) throws IOException {
        return new Scene(task);
    }

    /**
     * Something that can be said.
     *
     * @param element what javac knows of it
     * @param type its type, or that of its value, as it is here
     * @param own whether the workbook declares it
     */
    record Sayable(Element element, TypeMirror type, boolean own) {
        String name() {
            return element.getSimpleName().toString();
        }

        boolean isMethod() {
            return element instanceof ExecutableElement;
        }

        List<? extends VariableElement> parameters() {
            return isMethod() ? ((ExecutableElement) element).getParameters() : List.of();
        }
    }

    private static final class MarkFinder extends TreePathScanner<Void, Void> {
        private TreePath found;

        @Override
        public Void visitIdentifier(IdentifierTree name, Void none) {
            found = name.getName().contentEquals(Scaffold.MARK) ? getCurrentPath() : found;
            return null;
        }

        @Override
        public Void visitMemberSelect(MemberSelectTree select, Void none) {
            found = select.getIdentifier().contentEquals(Scaffold.MARK) ? getCurrentPath() : found;
            return super.visitMemberSelect(select, none);
        }

        @Override
        public Void visitErroneous(ErroneousTree broken, Void none) {
            return scan(broken.getErrorTrees(), none);
        }
    }

    /** Whether the mark stands where a word begins, and not behind a dot or where a name is given. */
    boolean isAtWord() {
        return mark.isPresent() && !(mark.get().getLeaf() instanceof MemberSelectTree);
    }

    /** Everything that can stand at the mark, but for the names of types. */
    List<Sayable> sayables() {
        if (mark.isEmpty()) {
            return List.of();
        }
        if (mark.get().getLeaf() instanceof MemberSelectTree select) {
            return members(select.getExpression());
        }
        List<Sayable> all = new ArrayList<>(names(mark.get()));
        staticImports().forEach(type -> membersOf(type, (DeclaredType) type.asType(), true, false, all));
        return all;
    }

    private List<Sayable> members(ExpressionTree of) {
        TreePath path = new TreePath(mark.get(), of);
        TypeMirror type = trees.getTypeMirror(path);
        if (!(type instanceof DeclaredType declared) || type.getKind() == TypeKind.ERROR) {
            return List.of();
        }
        Element named = trees.getElement(path);
        boolean ofType = named instanceof TypeElement;
        List<Sayable> all = new ArrayList<>();
        membersOf((TypeElement) declared.asElement(), declared, ofType, false, all);
        return all;
    }

    private void membersOf(TypeElement type, DeclaredType seen, boolean ofType, boolean own, List<Sayable> all) {
        for (Element member : task.getElements().getAllMembers(type)) {
            boolean isStatic = member.getModifiers().contains(Modifier.STATIC);
            boolean visible = member.getModifiers().contains(Modifier.PUBLIC) || own;
            boolean value =
                    member.getKind() == ElementKind.METHOD || member.getKind().isField();
            if (value && visible && isStatic == ofType && !isTheJdks(member)) {
                TypeMirror typed = task.getTypes().asMemberOf(seen, member);
                all.add(new Sayable(
                        member, typed instanceof ExecutableType method ? method.getReturnType() : typed, own));
            }
        }
    }

    /** What every object has, and what is of no use to a maker. */
    private static boolean isTheJdks(Element member) {
        String of =
                ((TypeElement) member.getEnclosingElement()).getQualifiedName().toString();
        return of.equals("java.lang.Object")
                || of.equals("java.lang.Enum")
                || Set.of("equals", "hashCode", "toString", "compareTo", "valueOf", "values", "imports")
                        .contains(member.getSimpleName().toString());
    }

    private List<TypeElement> staticImports() {
        return Words.imports().stream()
                .filter(line -> line.startsWith("import static "))
                .map(line -> line.substring("import static ".length(), line.lastIndexOf('.')))
                .map(task.getElements()::getTypeElement)
                .toList();
    }

    /** The names declared above the mark, the nearest first, and the workbook's methods. */
    private List<Sayable> names(TreePath at) {
        List<Sayable> names = new ArrayList<>();
        for (TreePath path = at; path.getParentPath() != null; path = path.getParentPath()) {
            TreePath around = path.getParentPath();
            if (around.getLeaf() instanceof BlockTree block) {
                int place = block.getStatements().indexOf(path.getLeaf());
                block.getStatements().subList(0, Math.max(0, place)).forEach(one -> name(around, one, names));
            } else if (around.getLeaf() instanceof LambdaExpressionTree lambda) {
                lambda.getParameters().forEach(one -> name(around, one, names));
            } else if (around.getLeaf() instanceof MethodTree method) {
                method.getParameters().forEach(one -> name(around, one, names));
            }
        }
        TypeElement cells = (TypeElement) trees.getElement(
                new TreePath(new TreePath(unit), unit.getTypeDecls().get(0)));
        membersOf(cells, (DeclaredType) cells.asType(), false, true, names);
        names.removeIf(one -> one.element().getSimpleName().contentEquals("cells"));
        return names;
    }

    private void name(TreePath around, Tree declared, List<Sayable> names) {
        if (declared instanceof VariableTree) {
            Element element = trees.getElement(new TreePath(around, declared));
            if (element != null) {
                names.add(new Sayable(element, element.asType(), true));
            }
        }
    }

    /** The types that are wanted at the mark; none if anything goes. */
    List<TypeMirror> wanted() {
        if (mark.isEmpty()) {
            return List.of();
        }
        TreePath expression = mark.get().getParentPath();
        Tree parent = expression.getParentPath().getLeaf();
        if (parent instanceof VariableTree variable && variable.getType() != null) {
            TypeMirror type = trees.getTypeMirror(new TreePath(expression.getParentPath(), variable.getType()));
            boolean known = type != null
                    && (type.getKind() == TypeKind.DECLARED || type.getKind().isPrimitive());
            return known ? List.of(type) : List.of();
        }
        if (parent instanceof MethodInvocationTree call && call.getArguments().contains(expression.getLeaf())) {
            return wantedBy(call, expression);
        }
        return List.of();
    }

    private List<TypeMirror> wantedBy(MethodInvocationTree call, TreePath expression) {
        int place = call.getArguments().indexOf(expression.getLeaf());
        String word = call.getMethodSelect() instanceof MemberSelectTree select
                ? select.getIdentifier().toString()
                : call.getMethodSelect().toString();
        List<Sayable> said = new ArrayList<>();
        if (call.getMethodSelect() instanceof MemberSelectTree select) {
            said.addAll(members(select.getExpression()));
        } else {
            staticImports().forEach(type -> membersOf(type, (DeclaredType) type.asType(), true, false, said));
        }
        return said.stream()
                .filter(one -> one.isMethod() && one.name().equals(word))
                .flatMap(one -> parameter((ExecutableElement) one.element(), place).stream())
                .toList();
    }

    private static Optional<TypeMirror> parameter(ExecutableElement method, int place) {
        List<? extends VariableElement> takes = method.getParameters();
        boolean many = method.isVarArgs() && place >= takes.size() - 1;
        if (many) {
            return Optional.of(((ArrayType) takes.get(takes.size() - 1).asType()).getComponentType());
        }
        return place < takes.size() ? Optional.of(takes.get(place).asType()) : Optional.empty();
    }

    /** Whether a value of the one type can stand where one of the others is wanted. */
    boolean fits(TypeMirror type, List<TypeMirror> wanted) {
        return type.getKind() != TypeKind.VOID
                && type.getKind() != TypeKind.ERROR
                && wanted.stream().anyMatch(one -> task.getTypes().isAssignable(type, one));
    }
}
