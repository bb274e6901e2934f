"""The Jupyter project's own kernel test suite, applied to this kernel. Run by .ci/run under Debian's python3."""

import unittest

import jupyter_kernel_test


class ShotledgerKernelTests(jupyter_kernel_test.KernelTests):
    kernel_name = "shotledger"
    language_name = "java"
    file_extension = ".java"
    code_hello_world = 'System.out.println("hello, world");'
    code_stderr = 'System.err.println("careful");'
    code_generate_error = "1 / 0"
    code_execute_result = [
        {"code": "6 * 7", "result": "42"},
        {"code": '"jet " + 62', "result": "jet 62"},
        {"code": "6 * 9", "result": "54"},
        {"code": "6 * 7", "result": "42"},
    ]
    code_display_data = [{"code": 'Display.show("shown")', "mime": "text/plain"}]
    code_clear_output = "Display.sink().clear(true);"
    code_inspect_sample = "Math.max("
    code_history_pattern = "6 *?7"
    supported_history_operations = ("tail", "range", "search")
    completion_samples = [
        {"text": "Math.hyp", "matches": {"hypot("}},
        {"text": "String.joi", "matches": {"join("}},
    ]
    complete_code_samples = ["1 + 1", "int a = 1;", "int f() {\n  return 1;\n}", "// only a remark"]
    incomplete_code_samples = ["int f() {", "for (int i = 0; i < 3; i++)", "int a ="]
    invalid_code_samples = ["int a = );", "}", "int b = a +; int c;"]


if __name__ == "__main__":
    unittest.main(verbosity=2)
