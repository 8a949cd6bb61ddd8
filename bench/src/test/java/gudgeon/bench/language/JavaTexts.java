package gudgeon.bench.language;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.ImportTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * Finds in Java what a person may read: literals, and literals put together with what fills the blanks between them. Where one of two
 * texts is chosen, both ways are found.
 */
final class JavaTexts extends TreePathScanner<Void, Void> {
    /** Ways of one text that are told apart; beyond that its parts are phrases by themselves. */
    private static final int MOST_WAYS = 12;
    /** Calls whose literals are compared or looked up, not shown. */
    private static final Set<String> COMPARING = Set.of(
            "equals",
            "startsWith",
            "endsWith",
            "contains",
            "indexOf",
            "replace",
            "replaceAll",
            "split",
            "matches",
            "compile",
            "get",
            "getOrDefault",
            "equalsIgnoreCase",
            "containsKey",
            "resolve",
            "lastIndexOf",
            "attribute",
            "header",
            "info",
            "warn",
            "error",
            "debug",
            "formParam",
            "queryParam",
            "getLogger",
            "before",
            "after",
            "post");
    /** Faults of the program itself, which no page shows. */
    private static final Set<String> PROGRAM_FAULTS = Set.of(
            "IllegalStateException",
            "AssertionError",
            "UncheckedIOException",
            "NullPointerException",
            "UnsupportedOperationException",
            "NoSuchElementException");

    private final Set<String> found = new LinkedHashSet<>();
    private boolean tooMany;

    /** The texts of some files. */
    static Set<String> of(Collection<Path> files) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        JavaTexts texts = new JavaTexts();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, manager, null, List.of("-proc:none"), null, manager.getJavaFileObjectsFromPaths(files));
            for (CompilationUnitTree unit : task.parse()) {
                texts.scan(unit, null);
            }
        }
        return texts.found;
    }

    @Override
    public Void visitAnnotation(AnnotationTree tree, Void none) {
        return null;
    }

    @Override
    public Void visitImport(ImportTree tree, Void none) {
        return null;
    }

    @Override
    public Void visitNewClass(NewClassTree tree, Void none) {
        return PROGRAM_FAULTS.contains(tree.getIdentifier().toString()) ? null : super.visitNewClass(tree, null);
    }

    @Override
    public Void visitMethodInvocation(MethodInvocationTree tree, Void none) {
        ExpressionTree select = tree.getMethodSelect();
        String name = select instanceof MemberSelectTree member
                ? member.getIdentifier().toString()
                : select.toString();
        if (name.equals("format") || name.equals("formatted")) {
            ExpressionTree pattern = name.equals("formatted") && select instanceof MemberSelectTree member
                    ? member.getExpression()
                    : tree.getArguments().stream()
                            .filter(JavaTexts::hasLiteral)
                            .findFirst()
                            .orElse(null);
            if (pattern != null) {
                ways(pattern)
                        .forEach(text -> add(text.replaceAll("%[-,+0-9.$]*[a-zA-Z]", TextForm.BLANK)
                                .replace("%%", "%")));
                tree.getArguments().stream().filter(each -> each != pattern).forEach(each -> scan(each, null));
                return null;
            }
        }
        if (COMPARING.contains(name)) {
            scan(select, null);
            tree.getArguments().stream().filter(each -> !isText(each)).forEach(each -> scan(each, null));
            return null;
        }
        return super.visitMethodInvocation(tree, null);
    }

    private static boolean isText(ExpressionTree tree) {
        return tree.getKind() == Tree.Kind.STRING_LITERAL || tree.getKind() == Tree.Kind.PLUS;
    }

    @Override
    public Void visitBinary(BinaryTree tree, Void none) {
        if (tree.getKind() == Tree.Kind.PLUS && hasLiteral(tree)) {
            ways(tree).forEach(this::add);
            fills(tree);
            return null;
        }
        return super.visitBinary(tree, null);
    }

    @Override
    public Void visitLiteral(LiteralTree tree, Void none) {
        if (tree.getValue() instanceof String text) {
            add(text);
        }
        return null;
    }

    private static boolean hasLiteral(ExpressionTree tree) {
        if (tree instanceof LiteralTree literal) {
            return literal.getValue() instanceof String;
        }
        if (tree instanceof BinaryTree sum && sum.getKind() == Tree.Kind.PLUS) {
            return hasLiteral(sum.getLeftOperand()) || hasLiteral(sum.getRightOperand());
        }
        if (tree instanceof ParenthesizedTree inner) {
            return hasLiteral(inner.getExpression());
        }
        return tree instanceof ConditionalExpressionTree choice
                && (hasLiteral(choice.getTrueExpression()) || hasLiteral(choice.getFalseExpression()));
    }

    /** Scans what fills the blanks of a text. */
    private void fills(ExpressionTree tree) {
        if (tree instanceof BinaryTree sum && sum.getKind() == Tree.Kind.PLUS) {
            fills(sum.getLeftOperand());
            fills(sum.getRightOperand());
        } else if (tree instanceof ParenthesizedTree inner) {
            fills(inner.getExpression());
        } else if (tree instanceof ConditionalExpressionTree choice && hasLiteral(choice)) {
            scan(choice.getCondition(), null);
            for (ExpressionTree chosen : List.of(choice.getTrueExpression(), choice.getFalseExpression())) {
                if (tooMany && hasLiteral(chosen)) {
                    ways(chosen).forEach(this::add);
                }
                fills(chosen);
            }
        } else if (!(tree instanceof LiteralTree)) {
            scan(tree, null);
        }
    }

    private List<String> ways(ExpressionTree tree) {
        List<String> all = ways(tree, true);
        tooMany = all.size() > MOST_WAYS;
        return tooMany ? ways(tree, false) : all;
    }

    private static List<String> ways(ExpressionTree tree, boolean each) {
        if (tree instanceof LiteralTree literal && !(literal.getValue() instanceof Number)) {
            return List.of(String.valueOf(literal.getValue()));
        }
        if (tree instanceof ParenthesizedTree inner) {
            return ways(inner.getExpression(), each);
        }
        if (tree instanceof BinaryTree sum && sum.getKind() == Tree.Kind.PLUS) {
            List<String> ends = ways(sum.getRightOperand(), each);
            return ways(sum.getLeftOperand(), each).stream()
                    .flatMap(begin -> ends.stream().map(end -> begin + end))
                    .toList();
        }
        if (tree instanceof ConditionalExpressionTree choice && hasLiteral(choice) && each) {
            List<String> all = new ArrayList<>(ways(choice.getTrueExpression(), true));
            all.addAll(ways(choice.getFalseExpression(), true));
            return all;
        }
        return List.of(TextForm.BLANK);
    }

    private void add(String raw) {
        String text = TextForm.of(raw);
        if (TextForm.isForPeople(text, inEnumConstant())) {
            found.add(text);
        }
    }

    private boolean inEnumConstant() {
        for (TreePath at = getCurrentPath(); at != null; at = at.getParentPath()) {
            if (at.getLeaf() instanceof VariableTree constant
                    && constant.getInitializer() instanceof NewClassTree made
                    && at.getParentPath().getLeaf() instanceof ClassTree of
                    && of.getKind() == Tree.Kind.ENUM
                    && of.getSimpleName().contentEquals(made.getIdentifier().toString())) {
                return true;
            }
        }
        return false;
    }
}
