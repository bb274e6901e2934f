package org.shotledger.snippet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;

/** What each name of a notebook must be after the cells run so far, kept without any Java compiler. */
final class EditModel {

    /** To compile a look takes as long as several cells. */
    private static final int CELLS_PER_LOOK = 5;

    private static final List<String> VARIABLES = List.of("a", "b", "c");
    private static final List<String> METHODS = List.of("f", "g");
    private static final List<String> CLOSURES = List.of("p", "q");
    private static final List<String> RECORDS = List.of("Jet", "Line");

    /** A variable: its type in Java and the value, as text. */
    private record Value(String type, String text) {}

    /** A method that gives back a number and the text of a variable, or of the other method. */
    private record Function(String type, int number, String used) {}

    /** A closure over a variable or a method, with what the captured name was declared as. */
    private record Closure(String captured, String declared) {}

    /** A record type: the number of its components, and a method over a variable. */
    private record Type(int components, String variable) {}

    /** A value of a record type, made when the type was this. */
    private record Instance(String record, String type, int first) {}

    private final JavaSession session;
    private final Random random;
    private final String title;
    private final Map<String, Value> variables = new TreeMap<>();
    private final Map<String, Function> methods = new TreeMap<>();
    private final Map<String, Closure> closures = new TreeMap<>();
    private final Map<String, Type> types = new TreeMap<>();
    private final Map<String, Instance> instances = new TreeMap<>();
    private final Set<String> told = new HashSet<>();
    private final Set<String> stale = new HashSet<>();
    private final List<String> log = new ArrayList<>();
    private final Map<String, String> present = new LinkedHashMap<>();
    private final Map<String, String> missing = new LinkedHashMap<>();
    private int cells;
    private int number = 10;

    EditModel(JavaSession session, Random random, String title) {
        this.session = session;
        this.random = random;
        this.title = title;
    }

    int cellsRun() {
        return cells;
    }

    void step() {
        cells++;
        switch (random.nextInt(12)) {
            case 0, 1, 2 -> declareVariable();
            case 3 -> assign();
            case 4, 5 -> declareMethod();
            case 6, 7 -> capture();
            case 8 -> declareRecord();
            case 9 -> makeInstance();
            case 10 -> breakSomething();
            default -> accept("import java.util.function.*;\nimport java.text.*;");
        }
        checkAll();
    }

    private String any(List<String> names) {
        return names.get(random.nextInt(names.size()));
    }

    private Value value() {
        int n = ++number;
        return switch (random.nextInt(3)) {
            case 0 -> new Value("int", String.valueOf(n));
            case 1 -> new Value("double", n + ".5");
            default -> new Value("String", "t" + n);
        };
    }

    private static String literal(Value value) {
        return value.type().equals("String") ? "\"" + value.text() + "\"" : value.text();
    }

    private void declareVariable() {
        String name = any(VARIABLES);
        Value value = value();
        accept((random.nextBoolean() ? value.type() : "var") + " " + name + " = " + literal(value) + ";");
        variables.put(name, value);
    }

    private void assign() {
        String name = any(VARIABLES);
        Value old = variables.get(name);
        if (old == null) {
            refuse(name + " = 1;", name);
            return;
        }
        Value value = value();
        while (!value.type().equals(old.type())) {
            value = value();
        }
        accept(name + " = " + literal(value) + ";");
        variables.put(name, value);
    }

    private void declareMethod() {
        String name = any(METHODS);
        String used = name.equals("g") && random.nextBoolean() ? "f()" : any(VARIABLES);
        int n = ++number;
        String type = random.nextInt(3) == 0 ? "Object" : "String";
        accept(type + " " + name + "() { return \"" + n + "\" + " + used + "; }");
        methods.put(name, new Function(type, n, used));
    }

    private void capture() {
        String name = any(CLOSURES);
        String captured = any(List.of("a", "b", "c", "f", "g", "f", "g", "jet", "line"));
        String source =
                "java.util.function.Supplier<Object> " + name + " = () -> \"<\" + " + use(captured) + " + \">\";";
        String declared = declaration(captured);
        if (declared == null) {
            refuse(source, captured);
            return;
        }
        accept(source);
        closures.put(name, new Closure(captured, declared));
    }

    private static String use(String name) {
        return METHODS.contains(name) ? name + "()" : VARIABLES.contains(name) ? name : name + ".shown()";
    }

    private String declaration(String name) {
        if (METHODS.contains(name)) {
            return methods.containsKey(name) ? methods.get(name).type() : null;
        }
        if (instances.containsKey(name)) {
            return instances.get(name).type();
        }
        return variables.containsKey(name) ? variables.get(name).type() : null;
    }

    /** What a record type is now; a variable of another type makes another class of it. */
    private String identity(String record) {
        Type type = types.get(record);
        return type == null ? null : type + " " + variables.get(type.variable()).type();
    }

    private void declareRecord() {
        String name = any(RECORDS);
        Type type = new Type(1 + random.nextInt(2), any(VARIABLES));
        if (!variables.containsKey(type.variable())) {
            return;
        }
        accept("record " + name + "(int first" + (type.components() == 2 ? ", int second" : "") + ") { String shown() {"
                + " return first + \"/\" + " + type.variable() + "; } }");
        types.put(name, type);
    }

    private void makeInstance() {
        String record = any(RECORDS);
        Type type = types.get(record);
        String name = record.toLowerCase(java.util.Locale.ROOT);
        int n = ++number;
        String source = "var " + name + " = new " + record + "(" + n
                + (type != null && type.components() == 2 ? ", 0" : "") + ");";
        if (type == null) {
            refuse(source, record);
            return;
        }
        accept(source);
        instances.put(name, new Instance(record, identity(record), n));
    }

    private void breakSomething() {
        String variable = any(VARIABLES);
        switch (random.nextInt(6)) {
            case 0 -> refuse("int " + variable + " = 1 / 0;", "zero");
            case 1 -> refuse("String " + variable + " = \"x\" + (1 / 0);", "zero");
            case 2 -> refuse("int " + variable + " = \"text\";", "ncompatible");
            case 3 -> refuse("record " + any(RECORDS) + "(int first) { Strng shown() { return null; } }", "Strng");
            case 4 -> refuse("String " + any(METHODS) + "() { int x = \"text\"; return null; }", "ncompatible");
            default -> refuse("String " + variable + " = \"" + "x".repeat(66_000) + "\";", "too long");
        }
    }

    private void accept(String source) {
        CellResult result = run(source);
        assertNull(result.error(), () -> story(String.join("\n", result.error().report())));
    }

    private void refuse(String source, String because) {
        CellResult result = run(source);
        assertNotNull(result.error(), () -> story("should fail"));
        assertTrue(
                String.join("\n", result.error().report()).contains(because),
                () -> story(String.join("\n", result.error().report())));
    }

    private CellResult run(String source) {
        log.add(source.length() > 300 ? source.substring(0, 40) + "..." : source);
        told.clear();
        CellResult result = session.evaluate(source, "In [" + cells + "]");
        for (String note : result.notes()) {
            log.add("    " + note);
            if (!note.contains(" keeps the value ") && !note.contains(" stays as ")) {
                told.addAll(List.of(note.split("\\W+", -1)));
            }
        }
        return result;
    }

    private String story(String end) {
        return title + "\n" + String.join("\n", log) + "\n" + end;
    }

    /** After every cell as far as that needs no compiler, and after some as a cell would see it. */
    private void checkAll() {
        loseInstances();
        checkAlarms();
        for (String name : VARIABLES) {
            Value value = variables.get(name);
            check(name, name, value == null ? null : value.text());
        }
        methods.forEach((name, method) -> check(name, name + "()", text(method)));
        closures.forEach(this::checkClosure);
        instances.forEach((name, instance) -> check(name, name + ".shown()", text(name)));
        lookAtValues();
        if (cells % CELLS_PER_LOOK == 0) {
            look();
        }
        present.clear();
        missing.clear();
    }

    /** Variables as they are, closures called, and values asked for their text. */
    private void lookAtValues() {
        variables.forEach((name, value) -> assertEquals(value.text(), String.valueOf(held(name)), () -> story(name)));
        closures.keySet().stream()
                .filter(name -> !stale.contains(name) && present.containsKey(name + ".get()"))
                .forEach(name -> assertEquals(
                        present.get(name + ".get()"), ((Supplier<?>) held(name)).get(), () -> story(name)));
        instances.keySet().forEach(name -> assertEquals(text(name), shown(held(name)), () -> story(name)));
    }

    private Object held(String name) {
        return session.control().variables().value(name);
    }

    private Object shown(Object instance) {
        try {
            Method shown = instance.getClass().getDeclaredMethod("shown");
            shown.setAccessible(true);
            return shown.invoke(instance);
        } catch (ReflectiveOperationException e) {
            throw new LinkageError(story("an instance cannot be asked"), e);
        }
    }

    private String text(Function method) {
        if (method.used().equals("f()")) {
            String inner = methods.containsKey("f") ? text(methods.get("f")) : null;
            return inner == null ? null : method.number() + inner;
        }
        Value value = variables.get(method.used());
        return value == null ? null : method.number() + value.text();
    }

    /** What a captured name gives now. */
    private String text(String name) {
        if (methods.containsKey(name)) {
            return text(methods.get(name));
        }
        Instance instance = instances.get(name);
        return instance == null
                ? variables.get(name).text()
                : instance.first() + "/"
                        + variables.get(types.get(instance.record()).variable()).text();
    }

    private void checkClosure(String name, Closure closure) {
        if (!closure.declared().equals(declaration(closure.captured()))) {
            assertTrue(
                    told.contains(name) || stale.contains(name),
                    () -> story(name + " uses what is no longer there, and nobody was told"));
            stale.add(name);
        } else {
            stale.remove(name);
            String inner = text(closure.captured());
            check(name, name + ".get()", inner == null ? null : "<" + inner + ">");
        }
    }

    /** Values of a type that is another one by now are gone. */
    private void loseInstances() {
        for (Map.Entry<String, Instance> one : Map.copyOf(instances).entrySet()) {
            if (!one.getValue().type().equals(identity(one.getValue().record()))) {
                String name = one.getKey();
                assertTrue(told.contains(name), () -> story(name + " is of an earlier type, and nobody was told"));
                instances.remove(name);
                assertNull(held(name), () -> story(name + " should be gone"));
            }
        }
    }

    /** Whatever was told must be so. */
    private void checkAlarms() {
        for (String name : told) {
            boolean alarm = closures.containsKey(name)
                    && closures.get(name)
                            .declared()
                            .equals(declaration(closures.get(name).captured()));
            assertFalse(alarm, () -> story(name + " is as it should be, and a note says otherwise"));
        }
    }

    /** Notes what an expression must give; null if it must fail. */
    private void check(String name, String expression, String expected) {
        if (expected == null) {
            missing.put(name, expression);
        } else {
            present.put(expression, expected);
        }
    }

    /** Looks at all that must be there at once, and at one of the names that must not be. */
    private void look() {
        if (!present.isEmpty()) {
            String all = String.join(" + '|' + ", present.keySet());
            CellResult result = session.evaluate("\"\" + " + all, "look");
            assertNull(
                    result.error(),
                    () -> story(all + " fails: " + result.error().report()));
            assertEquals(String.join("|", present.values()), result.value(), () -> story(all));
        }
        if (!missing.isEmpty()) {
            String name = any(List.copyOf(missing.keySet()));
            CellResult result = session.evaluate(missing.get(name), "look");
            assertNotNull(result.error(), () -> story(name + " should not be there but is " + result.value()));
        }
    }
}
