"""Makes tests/reference/data/gauge-study-points.csv: analysis of variance, components, intervals and regression of the sets in gauge-study-readings.csv.

    python3 gauge-study-points.py > ../data/gauge-study-points.csv

Sums of squares are differences of uncorrected sums in exact rational arithmetic, another way than the code's; tails and quantiles are
scipy's; the t tests of a mean and the regression are scipy.stats.ttest_1samp and linregress. The intervals of sums and differences of mean
squares are written out a component at a time from the formulas of Graybill & Wang (1980) and Ting and others (1990).
"""
import csv
import sys
from fractions import Fraction
from itertools import groupby
from math import sqrt
from pathlib import Path

import numpy as np
import scipy
from scipy import stats

HERE = Path(__file__).resolve().parent
CONFIDENCE = 0.95
TAIL = (1 - CONFIDENCE) / 2
SAID = f"rational arithmetic, scipy {scipy.__version__}"
SCIPY = f"scipy {scipy.__version__}"
out = csv.writer(sys.stdout, lineterminator="\n")
out.writerow(["set", "model", "quantity", "value", "made_by"])


def say(name, model, quantity, value, by=SAID):
    out.writerow([name, model, quantity, repr(float(value)), by])


def table(name, cells):
    """Mean squares of a crossed set: cells[part][person] is a list of rationals."""
    p, o, n = len(cells), len(cells[0]), len(cells[0][0])
    every = [x for part in cells for cell in part for x in cell]
    correction = sum(every) ** 2 / len(every)
    raw = sum(x * x for x in every)
    parts = sum(sum(x for cell in part for x in cell) ** 2 for part in cells) / Fraction(o * n)
    people = sum(sum(x for part in cells for x in part[j]) ** 2 for j in range(o)) / Fraction(p * n)
    both = sum(sum(cell) ** 2 for part in cells for cell in part) / Fraction(n)
    squares = {"part": parts - correction, "person": people - correction, "interaction": both - parts - people + correction, "repeatability": raw - both}
    df = {"part": p - 1, "person": o - 1, "interaction": (p - 1) * (o - 1), "repeatability": p * o * (n - 1)}
    say(name, "", "total.squares", raw - correction)
    if o == 1:
        squares, df = {k: squares[k] for k in ("part", "repeatability")}, {k: df[k] for k in ("part", "repeatability")}
    return (p, o, n), squares, df


def rows(name, model, squares, df, against):
    means = {source: float(squares[source] / df[source]) for source in squares}
    for source in squares:
        say(name, model, f"{source}.squares", squares[source])
        say(name, model, f"{source}.meanSquare", squares[source] / df[source])
        under = against.get(source)
        if under:
            f = squares[source] / df[source] / (squares[under] / df[under])
            say(name, model, f"{source}.f", f)
            say(name, model, f"{source}.p", stats.f.sf(float(f), df[source], df[under]))
    return means


def up(df):  # G
    return 1 - df / stats.chi2.ppf(1 - TAIL, df)


def down(df):  # H
    return df / stats.chi2.ppf(TAIL, df) - 1


def sum_interval(terms):
    """Graybill & Wang: weights above 0."""
    middle = sum(w * s for w, s, _ in terms)
    low = middle - sqrt(sum((up(df) * w * s) ** 2 for w, s, df in terms))
    return low, middle + sqrt(sum((down(df) * w * s) ** 2 for w, s, df in terms))


def difference_interval(weight, a, df_a, b, df_b):
    """Ting and others: weight * (a - b)."""
    f_up, f_down = stats.f.ppf(1 - TAIL, df_a, df_b), stats.f.ppf(TAIL, df_a, df_b)
    g = ((f_up - 1) ** 2 - up(df_a) ** 2 * f_up**2 - down(df_b) ** 2) / f_up
    h = ((1 - f_down) ** 2 - down(df_a) ** 2 * f_down**2 - up(df_b) ** 2) / f_down
    low = a - b - sqrt(up(df_a) ** 2 * a * a + down(df_b) ** 2 * b * b + g * a * b)
    high = a - b + sqrt(down(df_a) ** 2 * a * a + up(df_b) ** 2 * b * b + h * a * b)
    return weight * low, weight * high


def component(name, model, quantity, variance, interval):
    say(name, model, f"{quantity}.s", sqrt(max(0, variance)))
    say(name, model, f"{quantity}.low", max(0, interval[0]))
    say(name, model, f"{quantity}.high", max(0, interval[1]))


def components(name, model, size, mean, df):
    p, o, n = size
    error = "interaction" if model == "withInteraction" else "repeatability"
    e, dfe = mean["repeatability"], df["repeatability"]
    er, dfr = mean[error], df[error]
    component(name, model, "repeatability", e, (dfe * e / stats.chi2.ppf(1 - TAIL, dfe), dfe * e / stats.chi2.ppf(TAIL, dfe)))
    part = (mean["part"] - er) / (o * n)
    component(name, model, "part", part, difference_interval(1 / (o * n), mean["part"], df["part"], er, dfr))
    if o == 1:
        component(name, model, "total", e + max(0, part), sum_interval([(1 / n, mean["part"], df["part"]), (1 - 1 / n, e, dfe)]))
        return
    person = (mean["person"] - er) / (p * n)
    component(name, model, "person", person, difference_interval(1 / (p * n), mean["person"], df["person"], er, dfr))
    terms = [(1 / (p * n), mean["person"], df["person"])]
    interaction = 0
    if model == "withInteraction":
        interaction = (er - e) / n
        component(name, model, "interaction", interaction, difference_interval(1 / n, er, dfr, e, dfe))
        gauge = terms + [(1 / n - 1 / (p * n), er, dfr), (1 - 1 / n, e, dfe)]
        total = terms + [(1 / (o * n), mean["part"], df["part"]), (1 / n - 1 / (p * n) - 1 / (o * n), er, dfr), (1 - 1 / n, e, dfe)]
    else:
        gauge = terms + [(1 - 1 / (p * n), e, dfe)]
        total = terms + [(1 / (o * n), mean["part"], df["part"]), (1 - 1 / (p * n) - 1 / (o * n), e, dfe)]
    gauge_variance = e + max(0, person) + max(0, interaction)
    component(name, model, "gauge", gauge_variance, sum_interval(gauge))
    component(name, model, "total", gauge_variance + max(0, part), sum_interval([term for term in total if term[0] > 0]))
    say(name, model, "gauge.effectiveDf", sum(w * s for w, s, _ in gauge) ** 2 / sum((w * s) ** 2 / d for w, s, d in gauge))


def crossed(name, found):
    parts, people = sorted({int(r["part"]) for r in found}), sorted({r["person"] for r in found})
    cells = [[[Fraction(r["value"]) for r in found if int(r["part"]) == part and r["person"] == person] for person in people] for part in parts]
    size, squares, df = table(name, cells)
    if len(people) == 1:
        components(name, "onePerson", size, rows(name, "onePerson", squares, df, {"part": "repeatability"}), df)
        return
    components(name, "withInteraction", size, rows(name, "withInteraction", squares, df, {"part": "interaction", "person": "interaction", "interaction": "repeatability"}), df)
    pooled = {"part": squares["part"], "person": squares["person"], "repeatability": squares["interaction"] + squares["repeatability"]}
    df = {"part": df["part"], "person": df["person"], "repeatability": df["interaction"] + df["repeatability"]}
    components(name, "pooled", size, rows(name, "pooled", pooled, df, {"part": "repeatability", "person": "repeatability"}), df)


def references(name, found):
    x = np.array([float(r["reference"]) for r in found])
    off = np.array([float(Fraction(r["value"]) - Fraction(r["reference"])) for r in found])
    for reference in sorted(set(x)):
        one = stats.ttest_1samp(off[x == reference], 0)
        ends = one.confidence_interval(CONFIDENCE)
        for quantity, value in (("bias", off[x == reference].mean()), ("s", off[x == reference].std(ddof=1)), ("t", one.statistic), ("p", one.pvalue), ("low", ends.low), ("high", ends.high)):
            say(name, "", f"at {reference:g} {quantity}", value, f"{SCIPY} ttest_1samp")
    if len(set(x)) == 1:
        return
    line = stats.linregress(x, off)
    df = len(x) - 2
    for quantity, value, error in (("slope", line.slope, line.stderr), ("intercept", line.intercept, line.intercept_stderr)):
        t = value / error
        for suffix, number in (("", value), (".standardError", error), (".t", t), (".p", 2 * stats.t.sf(abs(t), df)), (".low", value - stats.t.ppf(1 - TAIL, df) * error), (".high", value + stats.t.ppf(1 - TAIL, df) * error)):
            say(name, "", quantity + suffix, number, f"{SCIPY} linregress")
    say(name, "", "rSquared", line.rvalue**2, f"{SCIPY} linregress")


with open(HERE.parent / "data" / "gauge-study-readings.csv") as file:
    every = list(csv.DictReader(file))
for name, found in groupby(every, key=lambda row: row["set"]):
    found = list(found)
    if name == "norris":
        continue
    (references if found[0]["reference"] else crossed)(name, found)
