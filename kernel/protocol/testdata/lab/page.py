"""JupyterLab's page: where things are in it, and when they are ready. Whatever is waited for is a condition."""

import base64
import contextlib
import json
import re
import shutil
import time

from playwright.sync_api import expect, sync_playwright

LIMIT = 60  # s, for each thing waited for: a slow machine takes its time
QUIET = ["gpu", "quic", "background-networking", "component-update", "sync"]
FLAGS = ["--no-sandbox", "--no-first-run", "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1"] + ["--disable-" + q for q in QUIET]

expect.set_options(timeout=LIMIT * 1000)


@contextlib.contextmanager
def browser():
    """An empty page of a headless browser."""
    with sync_playwright() as p:
        b = p.chromium.launch(executable_path=shutil.which("chromium"), headless=True, args=FLAGS, timeout=LIMIT * 1000)
        try:
            tab = b.new_page(viewport={"width": 1280, "height": 1000}, locale="en-US", reduced_motion="reduce")
            tab.set_default_timeout(LIMIT * 1000)
            yield tab
        finally:
            b.close()


class Page:
    """The lab with one worksheet, whose cells are called by their ids."""

    def __init__(self, tab, lab, pictures):
        self.page, self.lab, self.file, self.pictures, self.number = tab, lab, lab.file, pictures, 0
        self.names = [c["id"] for c in json.loads(lab.file.read_text())["cells"]]
        self.completions = tab.locator(".jp-Completer:visible .jp-Completer-item")
        self.explanation = tab.locator(".jp-Tooltip")
        pictures.mkdir(parents=True, exist_ok=True)

    def picture(self, name):
        self.page.screenshot(path=self.pictures / f"{self.number:02}_{name}.png")

    def until(self, what, condition):
        """Waits for what the page cannot wait for by itself."""
        end = time.monotonic() + LIMIT
        while not condition():
            if time.monotonic() > end:
                raise AssertionError(f"not within {LIMIT} s: {what}")
            self.page.wait_for_timeout(50)

    # The lab

    def open(self, path):
        self.page.goto(f"{self.lab.url}{path}?reset&token={self.lab.token}")  # nothing of an earlier visit

    def open_sheet(self):
        self.open("lab/tree/" + self.file.name)
        expect(self.page.locator(".jp-Notebook-cell")).to_have_count(len(self.names))
        self.ready()

    def ready(self):
        """Waits until the kernel waits: the status bar says so, and unlike the notebook's toolbar not too early."""
        expect(self.page.locator("#jp-main-statusbar")).to_contain_text("swanneck | Idle")

    def menu(self, name, entry):
        self.page.locator(".lm-MenuBar-item", has_text=re.compile(f"^{name}$")).click()
        self.page.locator(".lm-Menu-itemLabel", has_text=re.compile(f"^{entry}$")).click()

    def watch_kernel(self):
        """From now on every status that the bar shows is noted."""
        self.page.evaluate(
            """() => {
                const bar = document.querySelector("#jp-main-statusbar");
                window.statuses = [];
                new MutationObserver(() => window.statuses.push(bar.textContent)).observe(bar, {subtree: true, childList: true, characterData: true});
            }"""
        )

    def kernel_came_back(self):
        seen = [re.search(r"swanneck \| ([A-Z][a-z]+)", s) for s in self.page.evaluate("window.statuses")]
        seen = [s[1] for s in seen if s]
        return any(s not in ("Idle", "Busy") for s in seen) and seen[-1] == "Idle"

    # The cells

    def cell(self, name):
        return self.page.locator(".jp-Notebook-cell").nth(self.names.index(name))

    def prompt(self, name):
        return self.cell(name).locator(".jp-InputPrompt")

    def outputs(self, name):
        return self.cell(name).locator(".jp-OutputArea-output")

    def text(self, name):
        return self.cell(name).locator(".cm-content")

    def look_at(self, name):
        self.cell(name).evaluate("e => e.scrollIntoView({block: 'center', behavior: 'instant'})")

    def select(self, name):
        self.prompt(name).click()
        expect(self.cell(name)).to_have_class(re.compile("jp-mod-active"))
        expect(self.page.locator(".jp-Notebook.jp-mod-commandMode")).to_have_count(1)

    def start(self, name):
        """Starts a cell that was not run yet, or not since the last restart."""
        self.before = self.prompt(name).inner_text()
        self.select(name)
        self.page.keyboard.press("Control+Enter")

    def ended(self, name):
        expect(self.prompt(name)).not_to_have_text(self.before)
        expect(self.prompt(name)).to_have_text(re.compile(r"^\[\d+\]:$"))
        self.ready()

    def run(self, name):
        self.start(name)
        self.ended(name)
        self.look_at(name)

    def write(self, name, text):
        """Puts the text into a cell, with the cursor behind it and the mouse out of the way."""
        self.page.keyboard.press("Escape")
        expect(self.completions).to_have_count(0)
        expect(self.explanation).to_have_count(0)
        self.text(name).click()
        self.page.mouse.move(0, 0)
        self.page.keyboard.press("Control+a")
        self.page.keyboard.press("Delete")
        self.page.keyboard.type(text)
        expect(self.text(name)).to_have_text(text)

    def tab(self):
        """Presses Tab where it completes, once it does: too early it would indent."""
        expect(self.page.locator(".jp-Notebook-cell.jp-mod-active .jp-mod-completer-enabled")).to_have_count(1)
        self.page.keyboard.press("Tab")

    def ink(self, what):
        """Returns which part of something on the screen is not of the colour of its first corner, 0 to 1."""
        data = base64.b64encode(what.screenshot()).decode()
        return self.page.evaluate(
            """async data => {
                const picture = new Image();
                picture.src = "data:image/png;base64," + data;
                await picture.decode();
                const sheet = new OffscreenCanvas(picture.width, picture.height).getContext("2d");
                sheet.drawImage(picture, 0, 0);
                const dots = new Uint32Array(sheet.getImageData(0, 0, picture.width, picture.height).data.buffer);
                return dots.filter(d => d != dots[0]).length / dots.length;
            }""",
            data,
        )
