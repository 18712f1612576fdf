import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.TypeParameterTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * Writes the index of the words while the program is built: what the Javadoc in the source says of every public type,
 * method, constant and record component of some packages. Run by the build as {@code java WordIndexer.java SOURCES INDEX
 * PACKAGE...}; {@code org.kerfleaf.words.WordIndex} reads what it writes.
 *
 * <p>Sources are only parsed. A tag may stand in the line of its sentence, behind a blank. A component without {@code @param}
 * has the text of the interface's method it makes, or else of its record.
 */
final class WordIndexer extends TreePathScanner<Void, Void> {
    private static final Pattern TAG = Pattern.compile("(?<=\\s|^)@(param|return|throws|group|example)\\s+");
    private static final Pattern INLINE =
            Pattern.compile("\\{@(code|literal|link|linkplain)\\s+([^{}]*(?:\\{[^{}]*}[^{}]*)*)}");

    private final DocTrees docs;
    private final Map<String, Map<String, String>> entries = new LinkedHashMap<>();
    private final Map<String, List<String>> parents = new LinkedHashMap<>();
    private final Set<String> components = new HashSet<>();

    private WordIndexer(DocTrees docs) {
        this.docs = docs;
    }

    public static void main(String[] arguments) throws IOException {
        List<Path> sources = new ArrayList<>();
        for (String folder : Arrays.asList(arguments).subList(2, arguments.length)) {
            try (Stream<Path> files = Files.list(Path.of(arguments[0], folder.split("\\.")))) {
                files.filter(file -> file.toString().endsWith(".java")).sorted().forEach(sources::add);
            }
        }
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, files, null, List.of("-proc:none"), null, files.getJavaFileObjectsFromPaths(sources));
            WordIndexer indexer = new WordIndexer(DocTrees.instance(task));
            for (CompilationUnitTree unit : task.parse()) {
                indexer.scan(unit, null);
            }
            Path index = Path.of(arguments[1]);
            Files.createDirectories(index.getParent());
            Files.writeString(index, indexer.text());
        }
    }

    @Override
    public Void visitClass(ClassTree type, Void none) {
        boolean isPart = getCurrentPath().getParentPath().getLeaf() instanceof ClassTree;
        if (!type.getModifiers().getFlags().contains(Modifier.PUBLIC) && !(isPart && isInInterface())) {
            return null;
        }
        parents.put(
                nameOf(getCurrentPath()),
                type.getImplementsClause().stream().map(WordIndexer::simple).toList());
        Map<String, String> said = said(getCurrentPath());
        put("", "", "", said);
        if (type.getKind() == Tree.Kind.RECORD) {
            components(type, said);
        }
        return super.visitClass(type, none);
    }

    private void components(ClassTree type, Map<String, String> said) {
        List<VariableTree> fields = type.getMembers().stream()
                .filter(member -> member instanceof VariableTree)
                .map(VariableTree.class::cast)
                .filter(field -> !field.getModifiers().getFlags().contains(Modifier.STATIC))
                .toList();
        for (VariableTree one : fields) {
            String name = one.getName().toString();
            String text = said.getOrDefault("param " + name, "");
            components.add(nameOf(getCurrentPath()) + "#" + name + "()");
            put(
                    name + "()",
                    name + "()",
                    one.getType().toString(),
                    text.isEmpty() ? Map.of("component", name) : Map.of("component", name, "text", text));
        }
    }

    @Override
    public Void visitMethod(MethodTree method, Void none) {
        if (isPublic(method.getModifiers().getFlags()) && method.getReturnType() != null) {
            Map<String, String> bounds = method.getTypeParameters().stream()
                    .collect(Collectors.toMap(one -> one.getName().toString(), WordIndexer::bound));
            String types = method.getParameters().stream()
                    .map(one -> simple(one.getType()))
                    .map(one -> bounds.getOrDefault(one, one))
                    .collect(Collectors.joining(","));
            String names = method.getParameters().stream()
                    .map(one -> written(one) + " " + one.getName())
                    .collect(Collectors.joining(", "));
            put(
                    method.getName() + "(" + types + ")",
                    method.getName() + "(" + names + ")",
                    method.getReturnType().toString(),
                    said(getCurrentPath()));
        }
        return null;
    }

    @Override
    public Void visitVariable(VariableTree field, Void none) {
        if (isPublic(field.getModifiers().getFlags())) {
            put(
                    field.getName().toString(),
                    field.getName().toString(),
                    field.getType().toString(),
                    said(getCurrentPath()));
        }
        return null;
    }

    private boolean isPublic(Set<Modifier> flags) {
        return flags.contains(Modifier.PUBLIC)
                || !flags.contains(Modifier.PRIVATE)
                        && getCurrentPath().getParentPath().getLeaf().getKind() == Tree.Kind.INTERFACE;
    }

    private boolean isInInterface() {
        return getCurrentPath().getParentPath().getLeaf().getKind() == Tree.Kind.INTERFACE;
    }

    private void put(String member, String says, String gives, Map<String, String> said) {
        TreePath at = getCurrentPath().getLeaf() instanceof ClassTree
                ? getCurrentPath()
                : getCurrentPath().getParentPath();
        Map<String, String> entry = new LinkedHashMap<>();
        entry.put("of", nameOf(at));
        entry.put("word", member);
        entry.put("says", says);
        entry.put("gives", gives);
        entry.putAll(said);
        // A component's accessor that is written out wins over the one that is not.
        entries.merge(nameOf(at) + "#" + member, entry, (one, other) -> other.containsKey("text") ? other : one);
    }

    /** What a doc comment says: its text, and each tag under its own name. */
    private Map<String, String> said(TreePath at) {
        Map<String, String> said = new LinkedHashMap<>();
        String comment = docs.getDocComment(at);
        if (comment == null) {
            return said;
        }
        String key = "text";
        Matcher tag = TAG.matcher(comment);
        int from = 0;
        while (tag.find()) {
            keep(said, key, comment.substring(from, tag.start()));
            key = tag.group(1);
            from = tag.end();
        }
        keep(said, key, comment.substring(from));
        return said;
    }

    private static void keep(Map<String, String> said, String key, String raw) {
        String words = plain(raw);
        if (key.equals("param") || key.equals("throws")) {
            String[] named = words.split(" ", 2);
            said.merge(key + " " + named[0], named.length > 1 ? named[1] : "", (one, other) -> one + "; " + other);
        } else if (!words.isEmpty()) {
            said.put(key, words);
        }
    }

    private static String plain(String raw) {
        String text =
                INLINE.matcher(raw).replaceAll(one -> Matcher.quoteReplacement(inline(one.group(1), one.group(2))));
        return text.replaceAll("</?(?:p|code|em|b|i)>", " ")
                .replace("&nbsp;", " ")
                .replaceAll("\\s+", " ")
                .strip();
    }

    private static String inline(String tag, String inside) {
        return tag.startsWith("link")
                ? inside.replaceFirst(".*\\s", "").replaceFirst("^#", "").replaceFirst("^(?:[a-z]\\w*\\.)+", "")
                : inside;
    }

    private static String nameOf(TreePath type) {
        String outer = "";
        for (TreePath at = type.getParentPath(); at != null; at = at.getParentPath()) {
            if (at.getLeaf() instanceof ClassTree around) {
                outer = around.getSimpleName() + "." + outer;
            }
        }
        return type.getCompilationUnit().getPackageName() + "." + outer + ((ClassTree) type.getLeaf()).getSimpleName();
    }

    private static String bound(TypeParameterTree parameter) {
        return parameter.getBounds().isEmpty()
                ? "Object"
                : simple(parameter.getBounds().get(0));
    }

    /** A type as the class file knows it, without packages and outer types. */
    private static String simple(Tree type) {
        return type.toString()
                .replaceAll("<.*>", "")
                .replaceAll("(?:\\w+\\.)+(?=\\w)", "")
                .replace("...", "[]");
    }

    private static String written(VariableTree parameter) {
        boolean many = parameter.toString().contains("... ");
        String type = parameter.getType().toString();
        return many ? type.replaceFirst("\\[]$", "...") : type;
    }

    private String text() {
        StringBuilder text = new StringBuilder();
        entries.forEach((key, entry) -> {
            inherited(entry.get("of"), entry.get("word"))
                    .or(() -> ofType(entry.get("of"), "text").filter(own -> components.contains(key)))
                    .ifPresent(words -> entry.putIfAbsent("text", words));
            // A word without a group of its own is in that of its other forms, of what it is said of, or of what it
            // makes.
            otherForms(entry)
                    .or(() -> ofType(entry.get("of"), "group"))
                    .or(() -> named(entry.get("gives")).flatMap(made -> ofType(made, "group")))
                    .ifPresent(group -> entry.putIfAbsent("group", group));
            entry.forEach((name, words) ->
                    text.append(name).append('\t').append(words).append('\n'));
            text.append('\n');
        });
        return text.toString();
    }

    /** What a type or the interfaces above it say of a member. */
    private Optional<String> inherited(String type, String member) {
        Map<String, String> own = entries.getOrDefault(type + "#" + member, Map.of());
        if (member.isEmpty() || own.containsKey("text")) {
            return Optional.ofNullable(own.get("text"));
        }
        return parents.getOrDefault(type, List.of()).stream()
                .flatMap(parent -> named(parent).stream())
                .flatMap(parent -> inherited(parent, member).stream())
                .findFirst();
    }

    private Optional<String> otherForms(Map<String, String> entry) {
        String form = entry.get("of") + "#" + entry.get("word").replaceFirst("\\(.*", "(");
        return entries.entrySet().stream()
                .filter(one -> form.endsWith("(")
                        && one.getKey().startsWith(form)
                        && one.getValue().containsKey("group"))
                .map(one -> one.getValue().get("group"))
                .findFirst();
    }

    private Optional<String> ofType(String type, String tag) {
        return Optional.ofNullable(entries.get(type + "#").get(tag));
    }

    /** The type of that name among those read. */
    private Optional<String> named(String simple) {
        return parents.keySet().stream()
                .filter(one -> one.endsWith("." + simple))
                .findFirst();
    }
}
