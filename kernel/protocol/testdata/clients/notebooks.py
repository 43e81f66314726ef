"""Executes a notebook with nbclient and with `nbconvert --execute`."""

import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

import nbformat
from nbclient import NotebookClient
from nbclient.exceptions import CellExecutionError
from nbformat import v4

KERNEL = {"kernelspec": {"name": "swanneck", "display_name": "swanneck", "language": "go"}}


def notebook(*cells):
    return v4.new_notebook(cells=[v4.new_code_cell(c) for c in cells], metadata=KERNEL)


class Notebooks(unittest.TestCase):
    cells = ["x := 2", 'fmt.Println("x is", x)', "x * 21"]

    def check(self, book):
        self.assertEqual([c.execution_count for c in book.cells], [1, 2, 3])
        self.assertEqual(book.cells[1].outputs[0].text, "x is 2\n")
        self.assertEqual(book.cells[2].outputs[0].data["text/plain"], "42")
        nbformat.validate(book)

    def test_nbclient(self):
        book = notebook(*self.cells)
        NotebookClient(book, kernel_name="swanneck", timeout=60).execute()
        self.check(book)

    def test_error_names_the_line(self):
        book = notebook("a := 1\nb := a / (a - 1)\nfmt.Println(b)", "1")
        with self.assertRaises(CellExecutionError):
            NotebookClient(book, kernel_name="swanneck", timeout=60).execute()
        self.assertIn("2:", book.cells[0].outputs[0].evalue)

    def test_nbconvert(self):
        with tempfile.TemporaryDirectory() as folder:
            name = Path(folder) / "in.ipynb"
            nbformat.write(notebook(*self.cells), name)
            convert = [sys.executable, "-m", "nbconvert", "--to", "notebook", "--execute", "--output", "out", str(name)]
            subprocess.run(convert, check=True, timeout=120)
            self.check(nbformat.read(Path(folder) / "out.ipynb", 4))


if __name__ == "__main__":
    unittest.main(verbosity=2)
