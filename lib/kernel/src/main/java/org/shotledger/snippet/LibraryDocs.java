package org.shotledger.snippet;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/** The documentation of the library's classes, read from the sources that their jars carry. */
final class LibraryDocs {

    private static final String SOURCES = "META-INF/sources/";

    private final SessionOptions options;

    LibraryDocs(SessionOptions options) {
        this.options = options;
    }

    /** The documentation of what a line of the compiler describes; nothing for what is not the library's. */
    Optional<String> of(String line) {
        if (options.library().isEmpty()) {
            return Optional.empty();
        }
        return Signature.of(line)
                .flatMap(wanted -> options.classes().list(options.library(), true).stream()
                        .map(place -> place.binaryName().replace('$', '.'))
                        .filter(name -> name.equals(wanted.type()) || name.endsWith("." + wanted.type()))
                        .map(name -> text(name, wanted))
                        .flatMap(Optional::stream)
                        .findFirst());
    }

    /** A documentation comment of the JDK's own sources as plain text. */
    static String plain(String comment) {
        return documentation("/** " + comment + " */ class Any {}", "Any", new Signature("Any", "", null))
                .orElse(comment.strip());
    }

    private static Optional<String> text(String className, Signature wanted) {
        for (int end = className.length(); end > 0; end = className.lastIndexOf('.', end - 1)) {
            String outer = className.substring(0, end);
            Optional<String> source = source(outer);
            if (source.isPresent()) {
                String nested = className.substring(outer.lastIndexOf('.') + 1);
                return documentation(source.get(), nested, wanted);
            }
        }
        return Optional.empty();
    }

    private static Optional<String> source(String className) {
        String path = SOURCES + className.replace('.', '/') + ".java";
        try (InputStream in = LibraryDocs.class.getClassLoader().getResourceAsStream(path)) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static Optional<String> documentation(String source, String nested, Signature wanted) {
        JavacTask task = (JavacTask) ToolProvider.getSystemJavaCompiler()
                .getTask(null, null, problem -> {}, List.of("-proc:none"), null, List.of(new Text(source)));
        try {
            CompilationUnitTree unit = task.parse().iterator().next();
            DocTrees trees = DocTrees.instance(task);
            TreePath type = new Finder(nested).scan(new TreePath(unit), null);
            if (type == null) {
                return Optional.empty();
            }
            DocCommentTree own = trees.getDocCommentTree(type);
            if (wanted.member().isEmpty()) {
                return Optional.ofNullable(own).map(DocText::of);
            }
            for (Tree member : ((ClassTree) type.getLeaf()).getMembers()) {
                DocCommentTree comment = trees.getDocCommentTree(new TreePath(type, member));
                if (comment != null && matches(member, wanted)) {
                    return Optional.of(DocText.of(comment));
                }
            }
            // a record's components and their values are documented at the record
            return Optional.ofNullable(own).flatMap(comment -> DocText.ofComponent(comment, wanted.member()));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static boolean matches(Tree member, Signature wanted) {
        if (member instanceof MethodTree method && wanted.parameters() != null) {
            return method.getName().contentEquals(wanted.member())
                    && method.getParameters().stream()
                            .map(LibraryDocs::type)
                            .toList()
                            .equals(wanted.parameters());
        }
        return member instanceof VariableTree field
                && wanted.parameters() == null
                && field.getName().contentEquals(wanted.member());
    }

    private static String type(VariableTree parameter) {
        String written = Objects.toString(parameter.getType(), "");
        return Signature.simple(Signature.withoutTypeArguments(written));
    }

    /** Finds a class by its name and those around it, such as {@code Outer.Inner}. */
    private static final class Finder extends TreePathScanner<TreePath, Void> {
        private final String wanted;

        Finder(String wanted) {
            this.wanted = wanted;
        }

        @Override
        public TreePath visitClass(ClassTree type, Void unused) {
            return name(getCurrentPath()).equals(wanted) ? getCurrentPath() : super.visitClass(type, null);
        }

        private static String name(TreePath path) {
            String own = ((ClassTree) path.getLeaf()).getSimpleName().toString();
            TreePath parent = path.getParentPath();
            return parent.getLeaf() instanceof ClassTree ? name(parent) + "." + own : own;
        }

        @Override
        public TreePath reduce(TreePath first, TreePath second) {
            return first == null ? second : first;
        }
    }

    /** A source in memory. */
    private static final class Text extends SimpleJavaFileObject {
        private final String source;

        Text(String source) {
            super(URI.create("text:///Source.java"), JavaFileObject.Kind.SOURCE);
            this.source = source;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return source;
        }
    }
}
