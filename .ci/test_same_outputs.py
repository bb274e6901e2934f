"""A notebook gives the same outputs headless as through Jupyter, and what is written is valid. Run by .ci/run."""

import pathlib
import subprocess
import sys
import tempfile

import nbformat
from nbclient import NotebookClient

ROOT = pathlib.Path(__file__).resolve().parent.parent
FIXTURE = ROOT / "lib/kernel/src/test/resources/org/shotledger/runner/good.ipynb"


def shown(notebook):
    """The outputs that a reader sees, streams joined."""
    cells = []
    for cell in notebook.cells:
        if cell.cell_type == "code":
            seen = []
            for out in cell.outputs:
                if out.output_type == "stream":
                    seen.append((out.name, out.text))
                elif out.output_type == "error":
                    seen.append(("error", out.evalue))
                else:
                    seen.append((out.output_type, dict(out.data)))
            cells.append(seen)
    return cells


def compare(path):
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run([ROOT / "shotledger", "run", path, "--out", folder, "--to", "ipynb"], check=True)
        headless = nbformat.read(pathlib.Path(folder) / path.name, 4)
    nbformat.validate(headless)
    through = nbformat.read(path, 4)
    NotebookClient(through, kernel_name="shotledger", timeout=300,
                   resources={"metadata": {"path": str(path.parent)}}).execute()
    if shown(headless) != shown(through):
        for number, (a, b) in enumerate(zip(shown(headless), shown(through)), 1):
            if a != b:
                print("cell %d differs:\n  headless %r\n  jupyter  %r" % (number, a, b))
        sys.exit("%s: outputs differ" % path.name)
    print("%s: same outputs headless and through Jupyter" % path.name)


if __name__ == "__main__":
    for notebook in [FIXTURE] + sorted((ROOT / "notebooks").glob("*.ipynb")):
        compare(notebook)
