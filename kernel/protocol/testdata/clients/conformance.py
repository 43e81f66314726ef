"""Runs the public conformance tests of the notebook protocol against the kernel, with a sample for each of them."""

import unittest

import jupyter_kernel_test


class Kernel(jupyter_kernel_test.KernelTests):
    kernel_name = "swanneck"
    language_name = "go"
    file_extension = ".go"
    code_hello_world = 'fmt.Println("hello, world")'
    code_stderr = 'println("to the other stream")'
    completion_samples = [
        {"text": "strings.HasPre", "matches": {"HasPrefix"}},
        {"text": "fmt.Printl", "matches": {"Println"}},
        {"text": "conti", "matches": {"continue"}},
    ]
    complete_code_samples = ["1", "x := 2", "func f() int { return 3 }", 'fmt.Println("a")', "// a comment"]
    incomplete_code_samples = ["func f() {", "x :=", "fmt.Println(", "s := `raw", "for i := range 3 {\n"]
    invalid_code_samples = ["x := )", 's := "open', "f(]", "a # b"]
    code_page_something = "?fmt.Println"
    code_generate_error = "undefined(1)"
    code_execute_result = [
        {"code": "6 * 7", "result": "42"},
        {"code": '"a" + "b"', "result": "ab"},
        {"code": "1 << 10", "result": "1024"},
    ]
    code_display_data = [{"code": 'Show("a")', "mime": "text/plain"}]
    code_history_pattern = "6 ?*7"
    supported_history_operations = ("tail", "range", "search")
    code_inspect_sample = "fmt.Println"
    code_clear_output = "ClearOutput()"


class Welcome(jupyter_kernel_test.IopubWelcomeTests):
    kernel_name = "swanneck"
    support_iopub_welcome = True


if __name__ == "__main__":
    names = jupyter_kernel_test.__name__, jupyter_kernel_test.__version__
    print("%s %s" % names)
    result = unittest.main(exit=False, verbosity=2).result
    if result.skipped:
        print("skipped:", [str(test) for test, _ in result.skipped])
    raise SystemExit(not result.wasSuccessful() or bool(result.skipped))
