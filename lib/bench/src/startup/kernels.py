"""Times this kernel and its peers in the same run, in turns, over the protocol's own sockets.

Run from the project's top folder, on a quiet machine, after ./shotledger kernel install under each JDK (which makes the
start-up archives):

    /usr/bin/python3 lib/bench/src/startup/kernels.py [ROUNDS]

Each kernel is spoken to as a front end does: it is asked for its description until it answers, then gets its first cell.
For each: process start to the answer of that cell (clock, and processor time of the process), a trivial cell (median and
smallest of 40, and processor time each), 20,000 printed lines, resident memory. Then, for this kernel alone, resident memory
after a notebook's two charts, and a headless one-cell notebook, in turns with the least process that runs such a cell
(Bare.java). Medians over the rounds, smallest values beside them, since
other work on the machine only ever adds. The stock peer comes from Maven Central and needs JDK 25; it is the fair side of
each ratio on the same JDK, and of the ratio for JDK 17 for want of one that runs there.

A question is sent only once the kernel's socket is open, and again after a quarter of a second without an answer: the stock
peer loses what is sent earlier, and answers one message in 50 ms, so that asking more often would slow it down. Now and then it
ends on a question that comes too early all the same: such a round is repeated.
"""

import json
import os
import pathlib
import statistics
import subprocess
import sys
import tempfile
import time

import zmq
from jupyter_client.connect import write_connection_file
from jupyter_client.session import Session

ROOT = pathlib.Path(__file__).resolve().parents[4]
PEER = "io.github.padreati:rapaio-jupyter-kernel:3.0.1"
JAVA_LINES = "for (int i = 0; i < 20_000; i++) System.out.println(i);"
CHARTS = [
    'var p = Plan.find(Job.load("data/whimbrel"));', "Charts.of(p, UnitSystem.US)",
    "Charts.of(p.limits(), UnitSystem.US)"]
CELLS = 40
ASK_AGAIN_MILLIS = 250
READY_SECONDS = 12
ATTEMPTS = 4
CHART_ROUNDS = 2
REST_SECONDS = 3


def peer_jar(folder):
    _, artifact, version = PEER.split(":")
    subprocess.run(["mvn", "-q", "dependency:copy", "-Dartifact=" + PEER, "-DoutputDirectory=" + str(folder)],
                   cwd=ROOT, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    jar = folder / ("%s-%s.jar" % (artifact, version))
    return jar if jar.exists() else None


class NotReady(Exception):
    pass


class Kernel:
    def __init__(self, command, environment):
        self.folder = tempfile.TemporaryDirectory()
        key = b"measured"
        file, info = write_connection_file(os.path.join(self.folder.name, "connection.json"), key=key)
        self.context = zmq.Context()
        self.session = Session(key=key)
        self.shell = self.context.socket(zmq.DEALER)
        self.iopub = self.context.socket(zmq.SUB)
        self.iopub.setsockopt(zmq.SUBSCRIBE, b"")
        for socket in (self.shell, self.iopub):
            socket.setsockopt(zmq.RECONNECT_IVL, 5)
            socket.setsockopt(zmq.IMMEDIATE, 1)
            socket.setsockopt(zmq.RCVHWM, 0)
            socket.linger = 0
            socket.rcvtimeo = 15_000
        self.said = open(os.path.join(self.folder.name, "stderr"), "w+")
        self.start = time.perf_counter()
        self.process = subprocess.Popen(
            [part.replace("{connection_file}", file) for part in command], env={**os.environ, **environment},
            cwd=ROOT, stdout=subprocess.DEVNULL, stderr=self.said)
        self.shell.connect("tcp://127.0.0.1:%d" % info["shell_port"])
        self.iopub.connect("tcp://127.0.0.1:%d" % info["iopub_port"])
        try:
            self.await_ready()
        except zmq.Again:
            self.said.seek(0)
            last = "".join(self.said.readlines()[-4:])
            self.close()
            raise NotReady("%s said nothing for %d s; the end of its stderr:\n%s" % (
                command[0], READY_SECONDS, last)) from None

    def await_ready(self):
        end = time.perf_counter() + READY_SECONDS
        asked = None
        while asked is None or not self.shell.poll(ASK_AGAIN_MILLIS):
            if time.perf_counter() > end:
                raise zmq.Again()
            asked = self.session.send(self.shell, "kernel_info_request", {})
        reply = self.receive(self.shell)
        assert reply["msg_type"] == "kernel_info_reply", reply["msg_type"]

    def close(self):
        self.process.kill()
        self.process.wait()
        self.context.destroy(linger=0)
        self.said.close()
        self.folder.cleanup()

    def cell(self, code, whole=False):
        """Seconds to the reply, or to the end of its output."""
        start = time.perf_counter()
        sent = self.session.send(self.shell, "execute_request", dict(
            code=code, silent=False, store_history=True, user_expressions={}, allow_stdin=False, stop_on_error=True))
        reply = self.receive(self.shell)
        while reply["parent_header"].get("msg_id") != sent["header"]["msg_id"]:
            reply = self.receive(self.shell)
        assert reply["content"]["status"] == "ok", reply["content"]
        while whole:
            said = self.receive(self.iopub)
            mine = said["parent_header"].get("msg_id") == sent["header"]["msg_id"]
            whole = not (mine and said["content"].get("execution_state") == "idle")
        while self.iopub.poll(0):
            self.iopub.recv_multipart()
        return time.perf_counter() - start

    def receive(self, socket):
        return self.session.deserialize(self.session.feed_identities(socket.recv_multipart())[1])

    def processor_seconds(self):
        with open("/proc/%d/stat" % self.process.pid) as stat:
            fields = stat.read().rsplit(")", 1)[1].split()
        return sum(int(field) for field in fields[11:15]) / os.sysconf("SC_CLK_TCK")

    def megabytes(self):
        with open("/proc/%d/status" % self.process.pid) as status:
            return next(int(line.split()[1]) for line in status if line.startswith("VmRSS")) / 1000


def patient(*what):
    for _ in range(ATTEMPTS):
        try:
            return measure(*what)
        except NotReady as lost:
            print("a round is repeated: %s" % lost)
    raise SystemExit("%s never answered" % what[0][0])


def measure(command, environment, lines):
    kernel = Kernel(command, environment)
    try:
        kernel.cell("1 + 1")
        first, started = time.perf_counter() - kernel.start, kernel.processor_seconds()
        cells = [kernel.cell("1 + %d" % i) for i in range(CELLS)]
        each = (kernel.processor_seconds() - started) / CELLS
        return (first, started, statistics.median(cells) * 1000, min(cells) * 1000, each * 1000,
                kernel.cell(lines, whole=True), kernel.megabytes())
    finally:
        kernel.close()


def after_charts(command, environment):
    """Megabytes after two charts, and when the kernel has rested a little."""
    kernel = Kernel(command, environment)
    try:
        for code in CHARTS:
            kernel.cell(code)
        at_once = kernel.megabytes()
        time.sleep(REST_SECONDS)
        return at_once, kernel.megabytes()
    finally:
        kernel.close()


def headless(folder, environment):
    notebook = folder / "one.ipynb"
    notebook.write_text(json.dumps({
        "cells": [{"cell_type": "code", "id": "a", "metadata": {}, "execution_count": None, "outputs": [],
                   "source": "1 + 1"}],
        "metadata": {}, "nbformat": 4, "nbformat_minor": 5}))
    return seconds([ROOT / "shotledger", "run", notebook, "--out", folder / "out", "--to", "ipynb"], environment)


def bare(folder, jdk):
    """The command of the least process that runs the same cell, with an archive of just its own classes."""
    jar = folder / (jdk.name + ".jar")
    archive = str(folder / (jdk.name + ".archive"))
    java = [str(jdk / "bin/java"), "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-XX:-UsePerfData",
            "-XX:+UseTransparentHugePages"]
    classes = ["-cp", str(jar), "Bare"]
    steps = [[str(jdk / "bin/javac"), "-d", str(folder), str(pathlib.Path(__file__).with_name("Bare.java"))],
             [str(jdk / "bin/jar"), "-c", "-f", str(jar), "-C", str(folder), "Bare.class"]]
    if "-25-" in jdk.name:
        steps += [[*java, "-XX:AOTCacheOutput=" + archive, *classes]]
        command = [*java, "-XX:AOTCache=" + archive, *classes]
    else:
        steps += [[*java, "-XX:DumpLoadedClassList=" + archive + ".list", *classes],
                  [*java, "-Xshare:dump", "-XX:SharedClassListFile=" + archive + ".list",
                   "-XX:SharedArchiveFile=" + archive, *classes[:2]]]
        command = [*java, "-XX:SharedArchiveFile=" + archive, *classes]
    for step in steps:
        subprocess.run(step, check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    return command


def seconds(command, environment):
    start = time.perf_counter()
    subprocess.run(command, check=True, stdout=subprocess.DEVNULL, env={**os.environ, **environment})
    return time.perf_counter() - start


def all_kernels(jdks, folder):
    jar = peer_jar(folder)
    kernels = {}
    for jdk in jdks:
        kernels["own, " + jdk.name] = (
            ["bash", str(ROOT / "shotledger"), "kernel", "serve", "{connection_file}"], {"JAVA_HOME": str(jdk)},
            JAVA_LINES)
        if jar and "-25-" in jdk.name:
            kernels["stock, " + jdk.name] = (
                [str(jdk / "bin/java"), "-jar", str(jar), "{connection_file}"], {}, JAVA_LINES)
    kernels["ipykernel"] = (["/usr/bin/python3", "-m", "ipykernel_launcher", "-f", "{connection_file}"], {},
                            "for i in range(20_000): print(i)")
    return kernels


def show(rows):
    print("%-34s %8s %8s %8s %8s %8s %8s %8s %6s" % (
        "kernel", "first s", "least s", "cpu s", "cell ms", "least ms", "cpu ms", "lines s", "MB"))
    medians = {}
    for kernel, measured in rows.items():
        columns = list(zip(*measured))
        medians[kernel] = median = [statistics.median(column) for column in columns]
        print("%-34s %8.2f %8.2f %8.2f %8.1f %8.1f %8.1f %8.2f %6.0f" % (
            kernel, median[0], min(columns[0]), median[1], median[2], min(columns[3]), median[4], median[5],
            median[6]))
    for own in (name for name in medians if name.startswith("own")):
        for stock in (name for name in medians if name.startswith("stock")):
            ratio = [medians[stock][i] / medians[own][i] for i in range(7)]
            print("%s against %s: first answer %.1f times as fast (processor time %.1f), trivial cell %.1f (%.1f),"
                  " lines %.1f" % (own, stock, ratio[0], ratio[1], ratio[2], ratio[4], ratio[5]))


def main(rounds):
    jdks = sorted({j.resolve().parents[1] for j in pathlib.Path("/usr/lib/jvm").glob("*/bin/javac")})
    print("load of the machine: " + pathlib.Path("/proc/loadavg").read_text().strip())
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        kernels = all_kernels(jdks, folder)
        rows = {kernel: [] for kernel in kernels}
        for _ in range(rounds):
            for kernel, what in kernels.items():
                rows[kernel].append(patient(*what))
        show(rows)
        for kernel, (command, environment, _) in kernels.items():
            if kernel.startswith("own"):
                charts = list(zip(*(after_charts(command, environment) for _ in range(CHART_ROUNDS))))
                print("memory after two charts, %s: %.0f MB, %d s later %.0f MB" % (
                    kernel, statistics.median(charts[0]), REST_SECONDS, statistics.median(charts[1])))
        for jdk in jdks:
            least = bare(folder, jdk)
            pairs = [(headless(folder, {"JAVA_HOME": str(jdk)}), seconds(least, {})) for _ in range(2 * rounds)]
            whole, floor = zip(*pairs)
            print("headless one-cell notebook, %s: %.2f s, at least %.2f s; the bare cell %.2f s, at least %.2f s" % (
                jdk.name, statistics.median(whole), min(whole), statistics.median(floor), min(floor)))
    print("load of the machine: " + pathlib.Path("/proc/loadavg").read_text().strip())


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 5)
