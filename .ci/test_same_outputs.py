"""A notebook gives the same outputs headless as through Jupyter, and what is written is valid. Run by .ci/run.

The argument is a folder for what the headless run writes, pages included.
"""

import os
import pathlib
import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor

import nbformat
from nbclient import NotebookClient

ROOT = pathlib.Path(__file__).resolve().parent.parent
LIVE = "application/vnd.jupyter.widget-view+json"
FIXTURE = ROOT / "lib/kernel/src/test/resources/org/shotledger/runner/good.ipynb"


def shown(notebook):
    """The outputs that a reader sees, streams joined."""
    cells = []
    for cell in notebook.cells:
        if cell.cell_type == "code":
            seen = []
            for out in cell.outputs:
                if out.output_type == "stream" and seen and seen[-1][0] == out.name:
                    seen[-1] = (out.name, seen[-1][1] + out.text)
                elif out.output_type == "stream":
                    seen.append((out.name, out.text))
                elif out.output_type == "error":
                    seen.append(("error", out.evalue))
                else:
                    # a run without a page has no live controls to refer to; what stands in their place is compared
                    seen.append((out.output_type, {kind: form for kind, form in out.data.items() if kind != LIVE}))
            cells.append(seen)
    return cells


def through_jupyter(path):
    notebook = nbformat.read(path, 4)
    NotebookClient(notebook, kernel_name="shotledger", timeout=300,
                   resources={"metadata": {"path": str(path.parent)}}).execute()
    return shown(notebook)


def compare(path, headless, jupyter):
    nbformat.validate(headless)
    here = shown(headless)
    for number, (a, b) in enumerate(zip(here, jupyter), 1):
        if a != b:
            print("cell %d differs:\n  headless %r\n  jupyter  %r" % (number, a, b))
    if here != jupyter:
        sys.exit("%s: outputs differ" % path.name)
    print("%s: same outputs headless and through Jupyter" % path.name)


def main(paths, folder):
    with ThreadPoolExecutor(os.cpu_count()) as pool:
        subprocess.run([ROOT / "shotledger", "run", *paths, "--out", folder, "--to", "ipynb,html"], check=True)
        for path, jupyter in zip(paths, pool.map(through_jupyter, paths)):
            compare(path, nbformat.read(pathlib.Path(folder) / path.name, 4), jupyter)


if __name__ == "__main__":
    main([FIXTURE] + sorted((ROOT / "notebooks").glob("*.ipynb")), sys.argv[1])
