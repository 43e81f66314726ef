"""A JupyterLab of its own, with the kernel, below a folder."""

import contextlib
import json
import os
import secrets
import shutil
import subprocess
import sys
import time
from collections import namedtuple
from pathlib import Path

LIMIT = 60  # s, for start and end
WORKSHEET = "pear.ipynb"
SETTINGS = {
    # No news from outside.
    "apputils-extension/notification": {"fetchNews": "false", "checkForUpdates": False, "doNotDisturbMode": True},
    # All cells are in the page, those scrolled away too.
    "notebook-extension/tracker": {"windowingMode": "none"},
}

Lab = namedtuple("Lab", "url token file")


@contextlib.contextmanager
def server(program, home):
    """Runs JupyterLab on a free port of the loopback with a copy of the worksheet; everything it keeps is below home."""
    folder = {n: home / n for n in ("config", "data", "ipython", "prefix", "root", "runtime", "settings", "state", "workspaces")}
    for f in folder.values():
        f.mkdir()
    for name, values in SETTINGS.items():
        file = folder["settings"] / "@jupyterlab" / (name + ".jupyterlab-settings")
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(json.dumps(values))
    file = Path(shutil.copy(Path(__file__).with_name(WORKSHEET), folder["root"]))
    subprocess.run([program, "install", "--prefix", folder["prefix"]], check=True, stdout=subprocess.DEVNULL)
    token = secrets.token_hex()  # or any process of this machine could run code here
    own = {
        "HOME": home,
        "IPYTHONDIR": folder["ipython"],
        "JUPYTERLAB_SETTINGS_DIR": folder["settings"],
        "JUPYTERLAB_WORKSPACES_DIR": folder["workspaces"],
        "JUPYTER_CONFIG_DIR": folder["config"],
        "JUPYTER_DATA_DIR": folder["data"],
        "JUPYTER_PATH": folder["prefix"] / "share" / "jupyter",
        "JUPYTER_PREFER_ENV_PATH": "0",
        "JUPYTER_RUNTIME_DIR": folder["runtime"],
        "JUPYTER_TOKEN": token,
        "SWANNECK_STATE": folder["state"],
    }
    command = [sys.executable, "-m", "jupyterlab", "--no-browser", "--allow-root", "--ServerApp.ip=127.0.0.1", "--ServerApp.port=0"]
    command += ["--ServerApp.root_dir=%s" % folder["root"], "--LabApp.extension_manager=readonly", "--LanguageServerManager.autodetect=False"]
    log = home / "log"
    with log.open("wb") as out:
        process = subprocess.Popen(command, env=os.environ | {k: str(v) for k, v in own.items()}, stdout=out, stderr=out)
    try:
        yield Lab(address(process, folder["runtime"]), token, file)
    except BaseException:
        print(log.read_text(errors="replace")[-4000:])
        raise
    finally:
        process.terminate()
        try:
            process.wait(LIMIT)
        except subprocess.TimeoutExpired:
            process.kill()
            process.wait()


def address(process, runtime):
    """Waits until the server has written down where it listens."""
    until = time.monotonic() + LIMIT
    while process.poll() is None and time.monotonic() < until:
        for file in runtime.glob("jpserver-*.json"):
            with contextlib.suppress(ValueError):  # half written
                return json.loads(file.read_text())["url"]
        time.sleep(0.05)
    raise AssertionError("JupyterLab did not start")
