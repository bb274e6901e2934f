"""Times this kernel and its peers in the same run, through a real Jupyter client.

Run from the project's top folder, on a quiet machine:

    /usr/bin/python3 lib/bench/src/startup/kernels.py [ROUNDS]

Prints, for each kernel: process start to the first answer, median of a trivial cell, 20,000 printed lines, resident
memory after that; then a headless one-cell notebook. The stock peer comes from Maven Central and needs a newer JDK than 17:
the first of /usr/lib/jvm that starts it is used.
"""

import json
import os
import pathlib
import statistics
import subprocess
import sys
import tempfile
import time

from jupyter_client.manager import KernelManager

ROOT = pathlib.Path(__file__).resolve().parents[4]
PEER = "io.github.padreati:rapaio-jupyter-kernel:3.0.1"
JAVA_LINES = "for (int i = 0; i < 20_000; i++) System.out.println(i);"


def spec(folder, name, argv, language, env=None):
    target = folder / "kernels" / name
    target.mkdir(parents=True)
    content = {"argv": argv, "display_name": name, "language": language, "interrupt_mode": "message", "env": env or {}}
    (target / "kernel.json").write_text(json.dumps(content))


def peer_jar(folder):
    group, artifact, version = PEER.split(":")
    done = subprocess.run(
        ["mvn", "-q", "dependency:copy", "-Dartifact=" + PEER, "-DoutputDirectory=" + str(folder)],
        cwd=ROOT, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    jar = folder / ("%s-%s.jar" % (artifact, version))
    return jar if done.returncode == 0 and jar.exists() else None


def cell(client, code):
    start = time.perf_counter()
    message = client.execute(code)
    while True:
        reply = client.get_shell_msg(timeout=120)
        if reply["parent_header"].get("msg_id") == message:
            break
    elapsed = time.perf_counter() - start
    while True:
        published = client.get_iopub_msg(timeout=120)
        mine = published["parent_header"].get("msg_id") == message
        if mine and published["content"].get("execution_state") == "idle":
            return elapsed, time.perf_counter() - start, reply["content"]["status"]


def resident_megabytes(pid):
    with open("/proc/%d/status" % pid) as status:
        for line in status:
            if line.startswith("VmRSS"):
                return int(line.split()[1]) / 1000


def measure(name, lines):
    start = time.perf_counter()
    manager = KernelManager(kernel_name=name)
    manager.start_kernel()
    client = manager.client()
    client.start_channels()
    try:
        client.wait_for_ready(timeout=60)
        cell(client, "1 + 1")
        first = time.perf_counter() - start
        trivial = statistics.median(cell(client, "1 + %d" % i)[0] for i in range(30))
        cell(client, lines)
        printed = cell(client, lines)[1]
        return first, trivial, printed, resident_megabytes(manager.provisioner.process.pid)
    finally:
        client.stop_channels()
        manager.shutdown_kernel(now=True)


def headless(folder):
    notebook = folder / "one.ipynb"
    notebook.write_text(json.dumps({
        "cells": [{"cell_type": "code", "id": "a", "metadata": {}, "execution_count": None, "outputs": [],
                   "source": "1 + 1"}],
        "metadata": {}, "nbformat": 4, "nbformat_minor": 5}))
    start = time.perf_counter()
    subprocess.run([ROOT / "shotledger", "run", notebook, "--out", folder / "out", "--to", "ipynb"],
                   check=True, stdout=subprocess.DEVNULL)
    return time.perf_counter() - start


def main(rounds):
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        os.environ["JUPYTER_PATH"] = str(folder)
        jdks = sorted(pathlib.Path("/usr/lib/jvm").glob("*/bin/javac"))
        kernels = []
        for jdk in dict.fromkeys(j.resolve().parents[1] for j in jdks):
            kernel = "shotledger-" + jdk.name
            spec(folder, kernel, ["bash", str(ROOT / "shotledger"), "kernel", "serve", "{connection_file}"], "java",
                 {"JAVA_HOME": str(jdk)})
            kernels.append((kernel, JAVA_LINES))
            jar = peer_jar(folder)
            if jar:
                spec(folder, "stock-" + jdk.name, [str(jdk / "bin/java"), "-jar", str(jar), "{connection_file}"], "java")
                kernels.append(("stock-" + jdk.name, JAVA_LINES))
        spec(folder, "ipykernel", ["/usr/bin/python3", "-m", "ipykernel_launcher", "-f", "{connection_file}"], "python")
        kernels.append(("ipykernel", "for i in range(20_000): print(i)"))
        print("%-40s %10s %10s %10s %8s" % ("kernel", "first s", "cell ms", "lines s", "MB"))
        for kernel, lines in kernels:
            try:
                rows = [measure(kernel, lines) for _ in range(rounds)]
            except (RuntimeError, TimeoutError) as problem:
                print("%-40s does not start: %s" % (kernel, problem))
                continue
            first, trivial, printed, memory = (statistics.median(column) for column in zip(*rows))
            print("%-40s %10.2f %10.1f %10.2f %8.0f" % (kernel, first, trivial * 1000, printed, memory))
        print("headless one-cell notebook: %.2f s" % statistics.median(headless(folder) for _ in range(rounds)))


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 3)
