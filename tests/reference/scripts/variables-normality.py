"""Makes tests/reference/data/variables-normality.csv: the Shapiro-Wilk test of sets of values by scipy.

    python3 variables-normality.py > ../data/variables-normality.csv

scipy.stats.shapiro follows algorithm AS R94 (Royston, Applied Statistics 44 (1995) 547), but with normal quantiles of 7 digits, so W and p
agree with an exact calculation of the same formulas to about 1e-7. The sets are of this plant's own making: a linear congruential
generator, its uniforms turned into normal, lognormal, uniform and two-peaked values and rounded to 4 decimals, and the temperatures and
yield points of the examples of MIL-STD-414 (1957).
"""
import csv
import sys
from math import exp
from statistics import NormalDist

import scipy
from scipy import stats

state = 20261125


def uniform():
    global state
    state = (1103515245 * state + 12345) % 2**31
    return (state + 0.5) / 2**31


def values(shape, n):
    normal = [NormalDist().inv_cdf(uniform()) for _ in range(n)]
    made = {
        "normal": lambda z: 10 + 0.1 * z, "lognormal": lambda z: exp(z), "uniform": lambda z: NormalDist().cdf(z),
        "twoPeaks": lambda z: z / 4 + (3 if z > 0 else -3),
    }[shape]
    return [round(made(z), 4) for z in normal]


def main():
    out = csv.writer(sys.stdout, lineterminator="\n")
    out.writerow(["set", "n", "W", "p", "made_by", "values"])
    sets = [
        ("MIL-STD-414 Example B-1", [197, 188, 184, 205, 201]),
        ("MIL-STD-414 Example D-1", [62500, 60500, 68000, 59000, 65500, 62000, 61000, 69000, 58000, 64500]),
    ]
    sets += [(shape, values(shape, n)) for shape in ("normal", "lognormal", "uniform", "twoPeaks") for n in (3, 4, 5, 6, 7, 10, 11, 12, 15, 35, 75, 200)]
    sets += [("normal", values("normal", 1000)), ("normal", values("normal", 5000))]
    for name, xs in sets:
        if len(set(xs)) == 1:
            continue
        w, p = stats.shapiro(xs)
        out.writerow([name, len(xs), repr(float(w)), repr(float(p)), f"scipy {scipy.__version__} stats.shapiro", " ".join(f"{x:g}" if isinstance(x, int) else repr(x) for x in xs)])


main()
