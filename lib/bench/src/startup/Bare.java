import jdk.jshell.JShell;

/** The least a Java process can do to run one cell: a session of the JDK's own, one expression, no library, no file. */
final class Bare {
    private Bare() {}

    public static void main(String[] arguments) {
        JShell shell = JShell.builder()
                .executionEngine("local")
                .compilerOptions("-proc:none", "-Xlint:none")
                .build();
        System.out.println(shell.eval("1 + 1").get(0).value());
        System.exit(0);
    }
}
