"""Uses the kernel as people do: in a real JupyterLab in a headless browser, by its keys and menus.

    lab.py PROGRAM PICTURES

PROGRAM is the kernel's binary, PICTURES the folder for a screenshot of each step. Only the loopback is spoken to; what
else is written goes to a folder that is removed.
"""

import re
import sys
import tempfile
import time
from pathlib import Path

import nbformat
from page import Page, browser, expect
from server import server

steps = []


def step(function):
    """The steps run in the order in which they stand here; each builds on those before."""
    steps.append(function)
    return function


@step
def kernel_starts_from_the_launcher(p):
    p.open("lab")
    card = p.page.locator('.jp-LauncherCard[data-category="Notebook"]', has_text="swanneck")
    expect(card).to_have_count(1)
    picture = card.locator("img")
    p.until("the card's picture is drawn", lambda: picture.evaluate("e => e.complete && e.naturalWidth > 0"))
    p.picture("launcher")
    card.click()
    p.ready()


@step
def worksheet_opens_with_its_kernel(p):
    p.open_sheet()
    expect(p.page.locator(".jp-Notebook h1")).to_contain_text("A pear spirit for the shelf")
    expect(p.cell("tank").locator(".cm-content")).to_have_attribute("data-language", "go")


@step
def all_cells_run_in_order(p):
    p.menu("Run", "Run All Cells")
    expect(p.outputs("stir")).to_have_text(["stirring\n"])
    expect(p.prompt("stir")).to_have_text("[*]:")
    for count, name in enumerate(["tank", "order", "result", "chart"], 1):
        expect(p.prompt(name)).to_have_text(f"[{count}]:")
    expect(p.outputs("tank")).to_have_text(["in the tank: 240.00 L at 68.50 % vol (18.0 °C)\n"])
    p.look_at("order")
    kinds = [e.get_attribute("data-mime-type").rpartition(".")[2] for e in p.outputs("order").all()]
    assert kinds == ["stdout", "stderr", "text/plain", "stdout", "text/html"], kinds
    texts = [e.inner_text().strip() for e in p.outputs("order").all()]
    assert texts[:4] == ["jar 1\njar 2\njar 3", "to the other stream", "a note in between", "printed last"], texts
    assert "68.50" in texts[4], texts


@step
def results_are_tables(p):
    p.look_at("result")
    water, reduction = p.outputs("result").all()
    expect(water.locator("tr").first).to_have_text(re.compile(r"^Water\d+\.\dkg$"))
    expect(water).to_contain_text("true mass")
    expect(reduction.locator("tr", has_text="contraction")).to_have_text(re.compile(r"^contraction\d\.\d\dL$"))


@step
def chart_is_drawn(p):
    p.look_at("chart")
    picture = p.outputs("chart").locator("img, svg").first
    p.until("the chart is loaded", lambda: picture.evaluate("e => e.tagName != 'IMG' || e.complete && e.naturalWidth > 0"))
    box = picture.bounding_box()
    assert box["width"] > 300 and box["height"] > 150, box
    share = p.ink(picture)
    assert 0.01 < share < 0.5, share


@step
def loop_is_interrupted(p):
    p.select("stir")
    p.page.keyboard.press("i")
    p.page.keyboard.press("i")
    expect(p.outputs("stir").last).to_contain_text("interrupted")
    expect(p.prompt("stir")).to_have_text("[5]:")
    p.ready()
    p.look_at("stir")
    expect(p.outputs("stir")).to_have_text(["stirring\n", "interrupted"])
    for name in p.names[p.names.index("stir") + 1 :]:  # those that were waiting behind it
        expect(p.prompt(name)).to_have_text("[ ]:")
        expect(p.outputs(name)).to_have_count(0)


@step
def variables_outlive_the_interrupt(p):
    p.run("kept")
    expect(p.outputs("kept")).to_have_text(["kept: 240 L, stirred: true\n"])


@step
def mistakes_name_their_line(p):
    p.run("mistake")
    said = p.outputs("mistake").inner_text().split("\n")
    assert said[0].startswith("3:") and "index out of range [2] with length 2" in said[0], said
    assert said[1].strip() == '3 | fmt.Println("third jar:", jars[len(jars)])', said
    assert said[2].index("^") == said[1].index("jars["), said
    p.run("stop")
    expect(p.outputs("stop")).to_contain_text("1:1: Reduce: cannot raise 68.50 % vol to 80.00 % vol by adding water")
    expect(p.outputs("stop")).not_to_contain_text("goroutine")


@step
def questions_are_answered(p):
    p.start("ask")
    box = p.cell("ask").locator(".jp-Stdin-input")
    expect(p.cell("ask").locator(".jp-Stdin-prompt")).to_have_text("which jar? ")
    box.fill("12")
    box.press("Enter")
    p.ended("ask")
    expect(p.outputs("ask").last).to_have_text("poured from jar 12\n")


@step
def places_are_written_over(p):
    p.run("live")
    expect(p.outputs("live")).to_have_text(["3 of 3 bottles"])


@step
def tab_completes(p):
    p.write("scratch", "Redu")
    p.tab()
    for name, kind in [("Reduce", "function"), ("Reduction", "type"), ("reduction", "variable")]:
        line = p.completions.filter(has=p.page.get_by_text(name, exact=True))
        expect(line.locator(".jp-Completer-typeExtended")).to_have_text(kind)
    p.picture("tab_completes_a_name")
    p.page.keyboard.press("Enter")
    expect(p.text("scratch")).to_have_text("Reduce")
    p.write("scratch", "chart.")
    p.tab()
    for name in ["AltText", "Line", "Mark", "SVG"]:
        line = p.completions.filter(has=p.page.get_by_text(name, exact=True))
        expect(line.locator(".jp-Completer-typeExtended")).to_have_text("method")


@step
def shift_tab_explains(p):
    for text, code, prose in [
        ("Reduce", "func", "Reduce returns how much water brings a spirit down to the strength"),
        ("chart.Line", "(label string, xs []float64, ys []float64)", "Line adds a line through the points"),
    ]:
        p.write("scratch", text)
        p.page.keyboard.press("Shift+Tab")
        expect(p.explanation.locator("pre")).to_contain_text(code)
        expect(p.explanation.locator("p").first).to_contain_text(prose)
        p.picture("shift_tab_explains_" + text)
    p.write("scratch", "")


@step
def saved_file_is_sound(p):
    p.page.keyboard.press("Control+s")
    expect(p.page.locator(".lm-TabBar-tab.jp-mod-current.jp-mod-dirty")).to_have_count(0)
    book = nbformat.read(p.file, 4)
    nbformat.validate(book)
    cells = {c.id: c for c in book.cells}
    assert cells["chart"].outputs[0].data["image/svg+xml"].startswith("<svg"), cells["chart"].outputs
    assert cells["stir"].outputs[-1].ename == "Interrupted", cells["stir"].outputs
    info = book.metadata.language_info
    assert (info.name, info.file_extension, info.mimetype) == ("go", ".go", "text/x-go"), info


@step
def restart_forgets(p):
    p.select("kept")
    p.page.keyboard.press("0")
    p.page.keyboard.press("0")
    dialog = p.page.locator(".jp-Dialog")
    expect(dialog).to_contain_text("Restart Kernel?")
    p.picture("restart_asks")
    p.watch_kernel()
    dialog.locator(".jp-mod-accept").click()
    p.until("the kernel has gone and come back", p.kernel_came_back)
    p.run("kept")
    expect(p.prompt("kept")).to_have_text("[1]:")
    expect(p.outputs("kept")).to_contain_text("1:22: undefined: spirit")
    p.picture("restart_forgot")
    p.run("tank")
    expect(p.outputs("tank")).to_contain_text("in the tank")


def main(program, pictures):
    with tempfile.TemporaryDirectory() as home, server(program, Path(home)) as lab, browser() as tab:
        p = Page(tab, lab, Path(pictures))
        for number, do in enumerate(steps, 1):
            began = time.monotonic()
            p.number = number
            try:
                do(p)
            except BaseException:
                p.picture(do.__name__ + "_FAILED")
                print("FAILED", do.__name__, flush=True)
                raise
            p.picture(do.__name__)
            print("ok %5.2f s  %s" % (time.monotonic() - began, do.__name__.replace("_", " ")), flush=True)


if __name__ == "__main__":
    main(*sys.argv[1:])
