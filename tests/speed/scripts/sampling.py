"""The work of tests/speed/sampling-work.ts, done with scipy and numpy. Prints for each work: its name, seconds of this process's own time
for one time, and a sum of the answers, by which the two sides are held to have done the same. Every work is timed inside this process, the
median of seven rounds of at least 0.1 s each, after a first time that is not counted. Vectors are used wherever the work has many of a kind;
functions of scipy.special stand in for scipy.stats where they do the same with less ado."""
import bisect
import csv
import statistics
import time

import numpy as np
from scipy import special, stats


def timed(name, work):
    check = work()
    runs = 1
    while True:
        begun = time.process_time()
        for _ in range(runs):
            work()
        took = time.process_time() - begun
        if took >= 0.1:
            break
        runs = int(runs * max(2, 0.12 / max(took, 1e-4))) + 1
    rounds = []
    for _ in range(7):
        begun = time.process_time()
        for _ in range(runs):
            work()
        rounds.append((time.process_time() - begun) / runs)
    print(name, statistics.median(rounds), repr(float(check)), flush=True)


with open('tests/reference/data/code-letters.csv') as file:
    letters = list(csv.DictReader(file))
with open('tests/reference/data/single-normal.csv') as file:
    heads, *lines = list(csv.reader(file))
lot_from = [int(row['lot_min']) for row in letters]
row_of = [next(at for at, line in enumerate(lines) if line[0] == row['II']) for row in letters]
sizes = [int(line[1]) for line in lines]
cells = [[-1 if cell == 'up' else 1 if cell == 'down' else None if '/' not in cell else (int(cell.split('/')[0]),) for cell in line[2:]] for line in lines]
aqls = {float(head): at for at, head in enumerate(heads[2:])}
LOTS = [2, 20, 60, 120, 200, 400, 1000, 2500, 5000, 20000, 100000, 400000]


def look_up(lot, aql):
    """Letter by lot size, then along the arrows. One after another, as lots come; the tables stand ready as lists."""
    row, column = row_of[bisect.bisect_right(lot_from, lot) - 1], aqls[aql]
    while isinstance(cells[row][column], int):
        row += cells[row][column]
    return min(sizes[row], lot), cells[row][column][0]


def look_ups():
    total = 0
    for lot in LOTS:
        for aql in aqls:
            n, ac = look_up(lot, aql)
            total += n + ac
    return total


timed('look-up', look_ups)

N1, N2, AC1, RE1, AC2, N = 125, 125, 2, 5, 6, 10000
P = np.linspace(0, 0.1, 200)


def left(accepted1, second):
    return (accepted1 * (N - N1) + second * (N - N1 - N2)) / N


def curves(p, cdf, sf, pmf, cdf2, sf2, outgoing):
    """Pa, rejection, average sample, outgoing quality, total inspection of a double plan at 200 qualities at once."""
    accepted1, rejected, second, goes_on = cdf(AC1), sf(RE1 - 1), 0, 0
    for d in range(AC1 + 1, RE1):
        here = pmf(d)
        goes_on = goes_on + here
        second = second + here * cdf2(d)
        rejected = rejected + here * sf2(d)
    pa, asn = accepted1 + second, N1 + N2 * goes_on
    aoq = outgoing(accepted1, second)
    ati = N1 * accepted1 + (N1 + N2) * second + N * rejected
    return pa.sum() + rejected.sum() + asn.sum() + aoq.sum() + ati.sum()


def oc_lot():
    bad = np.round(P * N).astype(int)
    first = stats.hypergeom(N, bad, N1)
    def second(d): return stats.hypergeom(N - N1, np.maximum(bad - d, 0), N2)
    # A nonconforming piece that is left sees the samples come from the other N - 1 pieces.
    others = np.maximum(bad - 1, 0)
    rest = stats.hypergeom(N - 1, others, N1)
    def outgoing(*_):
        accepted2 = sum(rest.pmf(d) * stats.hypergeom.cdf(AC2 - d, N - 1 - N1, np.maximum(others - d, 0), N2) for d in range(AC1 + 1, RE1))
        return bad / N * left(rest.cdf(AC1), accepted2)
    return curves(bad / N, first.cdf, first.sf, first.pmf, lambda d: second(d).cdf(AC2 - d), lambda d: second(d).sf(AC2 - d), outgoing)


def oc_process():
    return curves(P, lambda k: special.bdtr(k, N1, P), lambda k: special.bdtrc(k, N1, P), lambda k: special.binom(N1, k) * P**k * (1 - P)**(N1 - k),
                  lambda d: special.bdtr(AC2 - d, N2, P), lambda d: special.bdtrc(AC2 - d, N2, P),
                  lambda accepted1, second: P * left(accepted1, second))


timed('oc-lot', oc_lot)
timed('oc-process', oc_process)

POINTS = [(0.01, 0.05), (0.01, 0.03), (0.02, 0.06), (0.005, 0.02), (0.04, 0.1), (0.001, 0.01)]
ALPHA, BETA = 0.05, 0.1


def first_plan(cdf_bad, sf_good, most):
    """Smallest single plan: for twenty Ac at once the n that p2 asks for, by halving together, and the first that accepts p1 often enough."""
    for block in range(50):
        c = block * 20 + np.arange(20)
        few, enough = c.copy(), np.full(20, most)
        while (enough - few > 1).any():
            middle = (few + enough) // 2
            meets = cdf_bad(c, middle) <= BETA
            few, enough = np.where(meets, few, middle), np.where(meets, middle, enough)
        good = np.flatnonzero(sf_good(c, enough) <= ALPHA)
        if len(good):
            return enough[good[0]] + c[good[0]]


def design_process():
    return sum(first_plan(lambda c, n: special.bdtr(c, n, p2), lambda c, n: special.bdtrc(c, n, p1), 10000) for p1, p2 in POINTS)


def design_lot():
    total = 0
    for p1, p2 in POINTS:
        good, bad = int(np.floor(N * p1 + 1e-9)), int(np.ceil(N * p2 - 1e-9))
        total += first_plan(lambda c, n: stats.hypergeom.cdf(c, N, bad, n), lambda c, n: stats.hypergeom.sf(c, N, good, n), N)
    return total


timed('design-process', design_process)
timed('design-lot', design_lot)

# A whole scheme under the switching rules of ISO 2859-1 at 50 qualities: states as in sampling.R, all 50 chains solved at once.
REDUCED = 75
moves = []
for scored in range(10):
    for since in range(5):
        here, later = scored * 5 + since, min(4, since + 1)
        moves.append((here, REDUCED if scored == 9 else (scored + 1) * 5 + later, 0))
        moves.append((here, later, 1))
        moves.append((here, 50 if since < 4 else 0, 2))
for row in range(5):
    for bad in range(5):
        here = 50 + row * 5 + bad
        moves.append((here, 4 if row == 4 else here + 5, 3))
        moves.append((here, 50 if bad == 4 else 50 + bad + 1, 4))
moves += [(REDUCED, REDUCED, 5), (REDUCED, 4, 6)]
FROM, TO, KIND = np.array(moves).T
Q = np.linspace(0.002, 0.1, 50)


def scheme():
    accepted, scored, tight, keeps, on_reduced = (special.bdtr(k, n, Q) for k, n in ((2, 80), (1, 80), (1, 80), (1, 32), (2, 32)))
    chance = np.stack([scored, accepted - scored, 1 - accepted, tight, 1 - tight, keeps, 1 - keeps])
    chains = np.zeros((50, 76, 76))
    for start, end, kind in zip(FROM, TO, KIND):
        chains[:, end, start] += chance[kind]
    chains -= np.eye(76)
    chains[:, REDUCED, :] = 1
    ends = np.zeros((50, 76, 1))
    ends[:, REDUCED] = 1
    share = np.linalg.solve(chains, ends)[:, :, 0]
    normal, tightened, reduced = share[:, :50].sum(1), share[:, 50:75].sum(1), share[:, 75]
    return (normal * accepted + tightened * tight + reduced * on_reduced + (normal + tightened) * 80 + reduced * 32).sum()


timed('scheme', scheme)
