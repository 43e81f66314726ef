"""Measures the kernel side by side with the reference kernel of the open notebook protocol, in one run.

    python -m venv env && env/bin/pip install --upgrade ipykernel pyzmq
    go build -o swanneck ./kernel/cmd/swanneck
    env/bin/python kernel/protocol/testdata/side_by_side.py swanneck

prints a table in Markdown, and ends with status 1 if something wanted is missed. It needs Linux, for /proc, and a
machine that does nothing else meanwhile.

Both kernels are started, spoken to and weighed by the same code, in turns, each start a new process with a new
connection file. The client works on raw sockets and waits in them, without a client library's pauses.

  first reply   from spawning the process to the kernel_info_reply. The shell's port is tried every half millisecond
                until something listens; then the socket connects.
  no-op cell    from sending the execute_request to its execute_reply. The next one is sent when the kernel is idle.
  prints        from sending the request to "idle", by when every line must have come, in order.
  memory        proportional set size of the kernel and all its descendants, after the cells above and a rest. Pages
                that several processes share are counted in parts. So a copy of the program is measured, which no other
                running kernel shares; what the reference shares with this client, which runs on the same interpreter,
                is counted half, which favours the reference.

One start of each goes first and is not counted: it fills the system's caches and lays down the kernels' state.
"""

import argparse
import contextlib
import hashlib
import hmac
import json
import os
import platform
import shutil
import socket
import statistics
import subprocess
import sys
import tempfile
import time
import uuid
from datetime import datetime, timezone
from pathlib import Path

import zmq

PRINTS = 10_000
LIMIT = 60  # seconds that anything may take

# What is wanted: at most this part of the reference's figure.
WANTED = {"first reply": (1, 10), "no-op cell": (1, 3), "prints": (1, 2), "memory": (3, 4)}


class Kind:
    """A kernel to measure: how it is started, and the cells in its language."""

    def __init__(self, name, argv, noop, prints):
        self.name, self.argv, self.noop, self.prints = name, argv, noop, prints
        self.samples = {what: [] for what in WANTED}


class Client:
    """One start of a kernel, and a conversation with it on raw sockets."""

    def __init__(self, kind, folder, env):
        self.key, self.session = uuid.uuid4().hex.encode(), uuid.uuid4().hex
        names = ["shell", "iopub", "stdin", "control", "hb"]
        ports = dict(zip(names, free_ports(len(names))))
        file = folder / f"{self.session}.json"
        connection = {f"{n}_port": p for n, p in ports.items()}
        connection |= {"ip": "127.0.0.1", "transport": "tcp", "signature_scheme": "hmac-sha256", "key": self.key.decode(),
                       "kernel_name": kind.name}
        file.write_text(json.dumps(connection))
        self.context = zmq.Context()
        self.shell, self.iopub = self.context.socket(zmq.DEALER), self.context.socket(zmq.SUB)
        self.iopub.subscribe(b"")
        for s in self.shell, self.iopub:
            s.linger, s.rcvhwm, s.rcvtimeo = 0, 0, LIMIT * 1000
        argv = [a.format(connection_file=file) for a in kind.argv]
        with open(folder / f"{kind.name}.log", "ab") as log:
            begin = time.perf_counter()
            self.process = subprocess.Popen(argv, env=env, stdin=subprocess.DEVNULL, stdout=log, stderr=log)
        await_port(ports["shell"], self.process)
        self.shell.connect(f"tcp://127.0.0.1:{ports['shell']}")
        request = self.send("kernel_info_request", {})
        self.reply(request, "kernel_info_reply")
        self.first_reply = time.perf_counter() - begin
        self.iopub.connect(f"tcp://127.0.0.1:{ports['iopub']}")
        self.await_subscription()

    def send(self, msg_type, content):
        msg_id = uuid.uuid4().hex
        header = {"msg_id": msg_id, "session": self.session, "username": "side by side", "msg_type": msg_type,
                  "version": "5.3", "date": datetime.now(timezone.utc).isoformat()}
        parts = [json.dumps(p).encode() for p in (header, {}, {}, content)]
        self.shell.send_multipart([b"<IDS|MSG>", self.sign(parts), *parts])
        return msg_id

    def sign(self, parts):
        h = hmac.new(self.key, digestmod=hashlib.sha256)
        for p in parts:
            h.update(p)
        return h.hexdigest().encode()

    def receive(self, sock):
        """The header, the parent's id and the content of the next message."""
        frames = sock.recv_multipart()
        at = frames.index(b"<IDS|MSG>")
        parts = frames[at + 2:at + 6]
        if frames[at + 1] != self.sign(parts):
            raise RuntimeError("the signature of a message does not fit")
        return json.loads(parts[0]), json.loads(parts[1]).get("msg_id"), json.loads(parts[3])

    def reply(self, request, msg_type):
        while True:
            header, parent, content = self.receive(self.shell)
            if parent == request and header["msg_type"] == msg_type:
                if content.get("status", "ok") != "ok":
                    raise RuntimeError(f"{msg_type}: {content}")
                return

    def until_idle(self, request):
        """The text of standard output up to the end of a request."""
        text = []
        while True:
            header, parent, content = self.receive(self.iopub)
            if parent != request:
                continue
            if header["msg_type"] == "stream" and content["name"] == "stdout":
                text.append(content["text"])
            if header["msg_type"] == "status" and content["execution_state"] == "idle":
                return "".join(text)

    def await_subscription(self):
        """Asks until the kernel's output arrives, and lets it come to rest."""
        end = time.monotonic() + LIMIT
        while time.monotonic() < end:
            request = self.send("kernel_info_request", {})
            self.reply(request, "kernel_info_reply")
            if self.iopub.poll(100):
                while self.iopub.poll(300):
                    self.receive(self.iopub)
                return
        raise RuntimeError("the kernel's output does not arrive")

    def execute(self, code):
        return self.send("execute_request", {"code": code, "silent": False, "store_history": True, "user_expressions": {},
                                             "allow_stdin": False, "stop_on_error": True})

    def round_trip(self, code):
        begin = time.perf_counter()
        request = self.execute(code)
        self.reply(request, "execute_reply")
        took = time.perf_counter() - begin
        self.until_idle(request)
        return took

    def output(self, code, want):
        begin = time.perf_counter()
        request = self.execute(code)
        got = self.until_idle(request)
        took = time.perf_counter() - begin
        if got != want:
            raise RuntimeError(f"{len(got)} bytes of output, not the {len(want)} that were printed")
        self.reply(request, "execute_reply")
        return took

    def close(self):
        family = descendants(self.process.pid)
        self.send("shutdown_request", {"restart": False})
        try:
            self.process.wait(5)
        except subprocess.TimeoutExpired:
            self.process.kill()
            self.process.wait()
        self.context.destroy(0)
        for pid in family[1:]:
            end = time.monotonic() + 5
            while Path(f"/proc/{pid}").exists() and time.monotonic() < end:
                time.sleep(0.01)


def free_ports(n):
    with contextlib.ExitStack() as stack:
        sockets = [stack.enter_context(socket.socket()) for _ in range(n)]
        for s in sockets:
            s.bind(("127.0.0.1", 0))
        return [s.getsockname()[1] for s in sockets]


def await_port(port, process):
    end = time.monotonic() + LIMIT
    while time.monotonic() < end:
        with socket.socket() as s:
            if s.connect_ex(("127.0.0.1", port)) == 0:
                return
        if process.poll() is not None:
            raise RuntimeError(f"the kernel ended with status {process.returncode}")
        time.sleep(0.0005)
    raise RuntimeError("the kernel does not listen")


def descendants(pid):
    """A process and all that come from it, parents first."""
    parents = {}
    for stat in Path("/proc").glob("[0-9]*/stat"):
        with contextlib.suppress(OSError):
            # The name, in brackets, may contain anything; the state and the parent follow it.
            parents[int(stat.parent.name)] = int(stat.read_text().rpartition(")")[2].split()[1])
    family = [pid]
    for p in family:
        family += sorted(child for child, parent in parents.items() if parent == p)
    return family


def proportional_mib(pid):
    kib = 0
    for p in descendants(pid):
        for line in Path(f"/proc/{p}/smaps_rollup").read_text().splitlines():
            if line.startswith("Pss:"):
                kib += int(line.split()[1])
    return kib / 1024


def measure(kind, folder, env, args):
    """Starts a kernel once and returns its samples."""
    client = Client(kind, folder, env)
    try:
        want = "".join(f"{i}\n" for i in range(PRINTS))
        noops = [client.round_trip(kind.noop) * 1e3 for _ in range(args.cells)]
        prints = [client.output(kind.prints, want) * 1e3 for _ in range(args.print_cells)]
        time.sleep(args.rest)
        return {"first reply": [client.first_reply * 1e3], "no-op cell": [statistics.median(noops)],
                "prints": [statistics.median(prints)], "memory": [proportional_mib(client.process.pid)]}
    finally:
        client.close()


def reference():
    """How front ends start the reference kernel, and its version."""
    ask = "import json, ipykernel, ipykernel.kernelspec as k; print(json.dumps([ipykernel.__version__, k.get_kernel_dict()['argv']]))"
    version, argv = json.loads(subprocess.run([sys.executable, "-c", ask], check=True, capture_output=True, text=True).stdout)
    return version, [sys.executable, *argv[1:]]


def processor():
    for line in Path("/proc/cpuinfo").read_text().splitlines():
        if line.startswith("model name"):
            return line.partition(":")[2].strip()
    return platform.machine()


def system():
    with contextlib.suppress(OSError):
        return platform.freedesktop_os_release()["PRETTY_NAME"]
    return "Linux"


def main():
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("swanneck", help="the program to measure")
    parser.add_argument("--starts", type=int, default=5, help="starts of each kernel, in turns")
    parser.add_argument("--cells", type=int, default=500, help="no-op cells a start")
    parser.add_argument("--print-cells", type=int, default=5, help=f"cells of {PRINTS} prints a start")
    parser.add_argument("--rest", type=float, default=3, help="seconds of rest before memory is looked at")
    args = parser.parse_args()

    program = shutil.which(os.path.abspath(args.swanneck)) or parser.error(f"{args.swanneck} is no program")
    version = subprocess.run([program, "version"], check=True, capture_output=True, text=True).stdout
    facts = dict(line.split(None, 1) for line in version.splitlines() if line.startswith("swanneck "))
    built = next(line.split()[2] for line in version.splitlines() if line.startswith("Built with"))
    reference_version, reference_argv = reference()
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        ours = Kind("swanneck", [shutil.copy(program, folder), "kernel", "--connection", "{connection_file}"],
                    "{}", f"for i := range {PRINTS} {{ fmt.Println(i) }}")
        theirs = Kind("ipykernel", reference_argv, "pass", f"for i in range({PRINTS}): print(i)")
        env = {k: v for k, v in os.environ.items() if not k.startswith("PYTHON")}
        for variable in "SWANNECK_STATE", "IPYTHONDIR", "JUPYTER_RUNTIME_DIR", "JUPYTER_CONFIG_DIR", "JUPYTER_DATA_DIR":
            env[variable] = str(folder / variable.lower())
            os.mkdir(env[variable])
        for turn in range(args.starts + 1):
            for kind in (ours, theirs) if turn % 2 else (theirs, ours):
                samples = measure(kind, folder, env, args)
                if turn > 0:
                    for what, values in samples.items():
                        kind.samples[what] += values
                print(f"start {turn} of {args.starts}, {kind.name}:",
                      ", ".join(f"{what} {v[0]:.2f}" for what, v in samples.items()), file=sys.stderr)

    rows = {"first reply": ("start of the process to the first `kernel_info_reply`", "ms"),
            "no-op cell": (f"no-op cell, request to reply, median of {args.cells}", "ms"),
            "prints": (f"a cell of {PRINTS:,} prints, request to idle, every line received", "ms"),
            "memory": ("memory at rest (proportional set size, all processes)", "MiB")}
    print(f"| | swanneck {facts['swanneck'].strip()} | ipykernel {reference_version} | ratio | wanted |")
    print("|-|-|-|-|-|")
    missed = False
    for what, (text, unit) in rows.items():
        a, b = (statistics.median(k.samples[what]) for k in (ours, theirs))
        part, whole = WANTED[what]
        missed |= a / b > part / whole
        print(f"| {text} | {a:.3g} {unit} | {b:.3g} {unit} | {a / b:.3f} | at most {part}/{whole} |")
    print()
    print(f"Medians of {args.starts} starts of each, in turns, {datetime.now(timezone.utc):%Y-%m-%d}: {os.cpu_count()} cores, "
          f"{processor()}, {system()}, kernel {platform.release()}; {built}, Python {platform.python_version()}, "
          f"pyzmq {zmq.__version__} over libzmq {zmq.zmq_version()}.")
    return missed


if __name__ == "__main__":
    sys.exit(main())
