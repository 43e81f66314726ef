#!/usr/bin/env python3
"""Bubble points of ethanol and water, and of a spirit of ten compounds, beside the Python library thermo, in one run.

Needs Go, and Python with `pip install thermo`. Run it from anywhere:

    python3 testdata/equilibrium/beside_thermo.py

It prints a Markdown table. Both sides solve the same problem: NRTL with the same parameters, original UNIFAC with the same
groups, ideal vapour; their vapour pressures come from different tables, so the temperatures differ by some hundredths of a
kelvin. A flash of thermo also makes ready the phases and their properties, and is plain Python: part of the factor is that.
The times of the Go side are those of `go test -bench`, the least of several; those of Python the least of several
rounds of timeit.
"""
import os
import platform
import re
import subprocess
import sys
import timeit
from importlib.metadata import version

import thermo
from thermo import (ChemicalConstantsPackage, FlashVL, GibbsExcessLiquid, IdealGas, NRTL, UNIFAC)
from thermo.unifac import UFIP, UFSG

P = 101325.0
ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
ROUNDS = 5

NRTL_A = [[0, -0.9282048307320118], [3.762484429550833, 0]]
NRTL_B = [[0, 358.22738915184794], [-745.5662638800103, 0]]
TWO, TWO_X = ["ethanol", "water"], [0.1, 0.9]

TEN = ["ethanol", "water", "methanol", "acetaldehyde", "ethyl acetate", "1-propanol", "isobutanol", "3-methyl-1-butanol",
       "isopentyl acetate", "acetic acid"]
TEN_X = [0.1, 0.8935, 0.001, 0.001, 0.001, 0.001, 0.001, 0.001, 0.0001, 0.0004]
# Groups of original UNIFAC, subgroup: count, as in mathlib/compound/data/groups.csv.
TEN_GROUPS = [{1: 1, 2: 1, 14: 1}, {16: 1}, {15: 1}, {1: 1, 20: 1}, {1: 1, 2: 1, 21: 1}, {1: 1, 2: 2, 14: 1},
              {1: 2, 2: 1, 3: 1, 14: 1}, {1: 2, 2: 2, 3: 1, 14: 1}, {1: 2, 2: 2, 3: 1, 21: 1}, {1: 1, 42: 1}]


def flasher(names, x, model):
    constants, correlations = ChemicalConstantsPackage.from_IDs(names)
    liquid = GibbsExcessLiquid(
        VaporPressures=correlations.VaporPressures, HeatCapacityGases=correlations.HeatCapacityGases,
        VolumeLiquids=correlations.VolumeLiquids, GibbsExcessModel=model, equilibrium_basis="Psat", caloric_basis="Psat",
        T=350.0, P=P, zs=x)
    gas = IdealGas(T=350.0, P=P, zs=x, HeatCapacityGases=correlations.HeatCapacityGases)
    return FlashVL(constants, correlations, liquid=liquid, gas=gas)


def python_times():
    """name -> (nanoseconds a bubble point, boiling temperature in K)"""
    nrtl = NRTL(T=350.0, xs=TWO_X, tau_as=NRTL_A, tau_bs=NRTL_B, alpha_cs=[[0, 0.4], [0.4, 0]])
    unifac = UNIFAC.from_subgroups(T=350.0, xs=TEN_X, chemgroups=TEN_GROUPS, version=0, interaction_data=UFIP, subgroups=UFSG)
    out = {}
    for name, f, x in (("BubbleNRTL", flasher(TWO, TWO_X, nrtl), TWO_X), ("BubbleTenUNIFAC", flasher(TEN, TEN_X, unifac), TEN_X)):
        def once():
            return f.flash(P=P, VF=0, zs=x)
        temp = once().T
        n = 10
        best = min(timeit.repeat(once, number=n, repeat=ROUNDS)) / n
        out[name] = (best * 1e9, temp)
    return out


def go_times():
    """name -> (nanoseconds a bubble point, boiling temperature in K)"""
    text = subprocess.run(
        ["go", "test", "-run", "^$", "-bench", "^Benchmark(BubbleNRTL|BubbleTenUNIFAC)$", "-benchtime", "0.3s", "-count", str(ROUNDS),
         "./mathlib/equilibrium"], cwd=ROOT, check=True, capture_output=True, text=True).stdout
    out = {}
    for line in text.splitlines():
        m = re.match(r"Benchmark(\w+?)(?:-\d+)?\s+\d+\s+([\d.]+) ns/op\s+([\d.]+) K", line)
        if m:
            ns, temp = float(m[2]), float(m[3])
            out[m[1]] = (min(ns, out.get(m[1], (ns,))[0]), temp)
    return out


def processor():
    try:
        with open("/proc/cpuinfo") as f:
            for line in f:
                if line.startswith("model name"):
                    return line.split(":", 1)[1].strip()
    except OSError:
        pass
    return platform.processor() or platform.machine()


def main():
    ours, theirs = go_times(), python_times()
    what = {"BubbleNRTL": "ethanol and water, NRTL", "BubbleTenUNIFAC": "ten compounds, original UNIFAC"}
    go = subprocess.run(["go", "version"], check=True, capture_output=True, text=True).stdout.split()[2]
    print(f"One bubble point at 101.325 kPa. {processor()}, {os.cpu_count()} cores, {platform.system()}; {go}; "
          f"Python {platform.python_version()}, thermo {thermo.__version__}, numpy {version('numpy')}.\n")
    print("| problem | here, µs | thermo, µs | times as fast | boils at, K: here | thermo |")
    print("|-|-|-|-|-|-|")
    slow = False
    for name, text in what.items():
        if name not in ours:
            sys.exit(f"the Go benchmark {name} printed no time")
        (a, ta), (b, tb) = ours[name], theirs[name]
        print(f"| {text} | {a / 1000:.2f} | {b / 1000:.0f} | {b / a:,.0f} | {ta:.2f} | {tb:.2f} |")
        if abs(ta - tb) > 0.2:
            sys.exit(f"{text}: {ta} K here, {tb} K by thermo: not the same problem")
        slow = slow or name == "BubbleNRTL" and b / a < 1000
    if slow:
        sys.exit("less than 1,000 times as fast for ethanol and water")


if __name__ == "__main__":
    main()
