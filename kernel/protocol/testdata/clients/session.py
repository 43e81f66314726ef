"""What the public conformance tests leave out, with the reference client: interrupt, restart, input, order, comms."""

import os
import queue
import signal
import subprocess
import sys
import tempfile
import time
import unittest

from jupyter_client.connect import write_connection_file
from jupyter_client.manager import start_new_kernel

LIMIT = 20


def state(pid):
    """The state of a process as the system's ps names it; empty if there is none."""
    return subprocess.run(["ps", "-o", "stat=", "-p", str(pid)], capture_output=True, text=True).stdout.strip()[:1]


class Session(unittest.TestCase):
    def setUp(self):
        self.manager, self.client = start_new_kernel(kernel_name="swanneck")

    def tearDown(self):
        self.client.stop_channels()
        self.manager.shutdown_kernel()

    def run_cell(self, code, **options):
        outputs = []
        reply = self.client.execute_interactive(code, timeout=LIMIT, output_hook=outputs.append, **options)
        return reply["content"], outputs

    def test_order(self):
        content, outputs = self.run_cell('for i := 0; i < 10000; i++ { fmt.Println(i); if i % 7 == 0 { println(i) } }')
        self.assertEqual(content["status"], "ok")
        text = {"stdout": "", "stderr": ""}
        for m in outputs:
            if m["msg_type"] == "stream":
                text[m["content"]["name"]] += m["content"]["text"]
        self.assertEqual(text["stdout"], "".join("%d\n" % i for i in range(10000)))
        self.assertEqual(text["stderr"], "".join("%d\n" % i for i in range(0, 10000, 7)))
        self.assertEqual(outputs[-1]["content"].get("execution_state"), "idle")

    def test_interrupt(self):
        self.run_cell("kept := 5")
        request = self.client.execute("for {}")
        time.sleep(0.3)
        self.manager.interrupt_kernel()
        reply = self.client.get_shell_msg(timeout=LIMIT)
        while reply["parent_header"].get("msg_id") != request:
            reply = self.client.get_shell_msg(timeout=LIMIT)
        self.assertEqual(reply["content"]["status"], "error")
        self.assertEqual(reply["content"]["ename"], "Interrupted")
        content, outputs = self.run_cell("kept")
        self.assertIn("5", [m["content"]["data"]["text/plain"] for m in outputs if m["msg_type"] == "execute_result"])

    def test_signal(self):
        for code in ["for {}", "1"]:
            request = self.client.execute(code)
            if code == "for {}":
                time.sleep(0.3)
                os.kill(self.manager.provisioner.pid, signal.SIGINT)
            reply = self.client.get_shell_msg(timeout=LIMIT)
            while reply["parent_header"].get("msg_id") != request:
                reply = self.client.get_shell_msg(timeout=LIMIT)
            self.assertEqual(reply["content"]["status"], "error" if code == "for {}" else "ok")

    def test_input(self):
        self.client.allow_stdin = True
        request = self.client.execute('Ask("charge? ")', allow_stdin=True)
        question = self.client.get_stdin_msg(timeout=LIMIT)
        self.assertEqual(question["content"], {"prompt": "charge? ", "password": False})
        self.client.input("12")
        reply = self.client.get_shell_msg(timeout=LIMIT)
        while reply["parent_header"].get("msg_id") != request:
            reply = self.client.get_shell_msg(timeout=LIMIT)
        self.assertEqual(reply["content"]["status"], "ok")

    def test_orphan(self):
        """A kernel whose parent is killed ends."""
        with tempfile.TemporaryDirectory() as folder:
            name = os.path.join(folder, "connection.json")
            write_connection_file(name, key=b"k")
            argv = [a.format(connection_file=name) for a in self.manager.kernel_spec.argv]
            script = "import subprocess, sys, time; print(subprocess.Popen(sys.argv[1:]).pid, flush=True); time.sleep(60)"
            parent = subprocess.Popen([sys.executable, "-c", script, *argv], stdout=subprocess.PIPE, text=True)
            pid = int(parent.stdout.readline())
            time.sleep(0.5)
            os.kill(pid, 0)
            parent.kill()
            parent.wait()
            parent.stdout.close()
            for _ in range(50):
                time.sleep(0.1)
                if state(pid) in ("", "Z"):
                    return
            os.kill(pid, signal.SIGKILL)
            self.fail("the kernel outlived its parent")

    def test_restart(self):
        self.run_cell("gone := 5")
        self.manager.restart_kernel(now=False)
        self.client.wait_for_ready(timeout=LIMIT)
        content, _ = self.run_cell("gone")
        self.assertEqual(content["status"], "error")
        content, _ = self.run_cell("1")
        self.assertEqual(content["execution_count"], 2)

    def test_comms(self):
        comm = self.client.session.msg("comm_open", {"comm_id": "c1", "target_name": "nobody", "data": {}})
        self.client.shell_channel.send(comm)
        until = time.time() + LIMIT
        while time.time() < until:
            m = self.client.get_iopub_msg(timeout=LIMIT)
            if m["msg_type"] == "comm_close":
                self.assertEqual(m["content"]["comm_id"], "c1")
                break
        else:
            self.fail("the comm of an unknown target was not closed")
        self.client.comm_info()
        m = self.client.get_shell_msg(timeout=LIMIT)
        while m["msg_type"] != "comm_info_reply":
            m = self.client.get_shell_msg(timeout=LIMIT)
        self.assertEqual(m["content"]["comms"], {})

    def test_heartbeat(self):
        self.client.execute("for {}")
        time.sleep(2.5)
        self.assertTrue(self.client.hb_channel.is_beating())
        self.manager.interrupt_kernel()

    def test_silence_after_idle(self):
        self.run_cell('fmt.Println("a")')
        with self.assertRaises(queue.Empty):
            self.client.get_iopub_msg(timeout=0.2)


if __name__ == "__main__":
    unittest.main(verbosity=2)
