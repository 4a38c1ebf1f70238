"""Makes tests/reference/data/design-points.csv: the smallest single and double plans through two risk points, by trying every plan.

    python3 design-points.py > ../data/design-points.csv

Single: n = 1, 2, 3 …, and for each n every Ac, with the tails of scipy.stats. Double: n1 = 1, 2, 3 …, and for each every pair Ac1 < Ac2,
Pa = P(X1 <= Ac1) + sum over d of P(X1 = d) * P(X2 <= Ac2 - d | d), the second sample drawn from what the first left. The code under
test goes neither way: it climbs by bounds, and adds up over the total of both samples. One lot of N has p1*N nonconforming pieces rounded
down in good lots, p2*N rounded up in bad ones. The plan is the first that meets both points; of doubles the one that looks at fewest
pieces of quality p1. A risk is met within 1 + 1e-12 of it.
"""
import csv
import math
import sys

import numpy as np
import scipy
from scipy import stats

SLACK = 1 + 1e-12


def law(model, lot, p, up):
    if model == 'binomial':
        return lambda n, drawn=0, found=0: stats.binom(n, p)
    if model == 'poisson':
        return lambda n, drawn=0, found=0: stats.poisson(n * p)
    pieces = (math.ceil if up else math.floor)(round(lot * p, 9))
    return lambda n, drawn=0, found=0: stats.hypergeom(lot - drawn, pieces - found, n)


def single(good, bad, alpha, beta, most):
    for n in range(1, most + 1):
        counts = np.arange(0, max(60, min(n, 400)))
        meets = np.flatnonzero((good(n).sf(counts) <= alpha * SLACK) & (bad(n).cdf(counts) <= beta * SLACK))
        if len(meets):
            ac = int(meets[0])
            return n, ac, good(n).sf(ac), bad(n).cdf(ac)
    return None


def accepted(of, n1, n2, c2, counts):
    """Pa for every Ac1 = 0 … c2 - 1, with this Ac2."""
    first = of(n1)
    on = []
    for d in range(c2 + 1):
        chance = first.pmf(d)
        on.append(chance * of(n2, n1, d).cdf(c2 - d) if chance > 0 else 0.0)
    later = np.cumsum(on[::-1])[::-1]  # later[d]: sum from d to c2
    return first.cdf(counts[:c2]) + later[1:c2 + 1]


def double(good, bad, alpha, beta, ratio, most, from_n1):
    counts = np.arange(0, 60)
    for n1 in range(from_n1, most + 1):
        n2 = max(1, math.floor(ratio * n1 + 0.5))
        if n1 + n2 > most:
            return None
        best = None
        for c2 in range(1, 60):
            of_bad = accepted(bad, n1, n2, c2, counts)
            if of_bad[0] > beta * SLACK:
                break
            of_good = accepted(good, n1, n2, c2, counts)
            for c1 in np.flatnonzero((1 - of_good <= alpha * SLACK) & (of_bad <= beta * SLACK)):
                average = n1 + n2 * (good(n1).cdf(c2) - good(n1).cdf(c1))
                if best is None or average < best[-1] - 1e-12:
                    best = (n1, int(c1), n2, c2, 1 - of_good[c1], of_bad[c1], average)
        if best:
            return best
    return None


out = csv.writer(sys.stdout, lineterminator='\n')
out.writerow(['samples', 'model', 'lot_size', 'p1', 'producer_risk', 'p2', 'consumer_risk', 'ratio', 'n1', 'ac1', 'n2', 'ac2', 'producer_got', 'consumer_got', 'average_at_p1', 'source'])
SOURCE = f'every plan tried, scipy {scipy.__version__}'
POINTS = [(0.01, 0.05, 0.05, 0.1), (0.01, 0.05, 0.06, 0.1), (0.01, 0.05, 0.08, 0.1), (0.02, 0.05, 0.1, 0.05), (0.005, 0.1, 0.04, 0.1), (0.04, 0.05, 0.12, 0.1), (0.1, 0.01, 0.3, 0.05),
          (0.001, 0.05, 0.02, 0.1), (0.15, 0.2, 0.4, 0.2), (0.3, 0.05, 0.7, 0.05)]
MODELS = [('binomial', None), ('poisson', None), ('hypergeometric', 60), ('hypergeometric', 400), ('hypergeometric', 20_000)]
for p1, alpha, p2, beta in POINTS + [(0.01, 0.05, 0.02, 0.1), (0.05, 0.05, 0.08, 0.1), (0.002, 0.05, 0.006, 0.1)]:
    for model, lot in MODELS:
        found = single(law(model, lot, p1, False), law(model, lot, p2, True), alpha, beta, lot or 5000)
        n, ac, a, b = found
        out.writerow(['single', model, lot or '', p1, alpha, p2, beta, '', n, ac, '', '', repr(float(a)), repr(float(b)), '', SOURCE])
for p1, alpha, p2, beta in POINTS:
    for model, lot in MODELS[:4]:
        for ratio in (1, 2) if p2 / p1 > 4 else (1,):
            found = double(law(model, lot, p1, False), law(model, lot, p2, True), alpha, beta, ratio, lot or 600, 1)
            asked = ['double', model, lot or '', p1, alpha, p2, beta, ratio]
            if found is None:
                out.writerow(asked + [''] * 7 + [SOURCE])
            else:
                n1, c1, n2, c2, a, b, average = found
                out.writerow(asked + [n1, c1, n2, c2, repr(float(a)), repr(float(b)), repr(float(average)), SOURCE])
