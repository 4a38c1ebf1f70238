"""Makes tests/reference/data/chance-points.csv: values of the probability functions, worked out apart from the code under test.

    python3 chance-points.py > ../data/chance-points.csv

Every value comes from mpmath with 40 digits, by the defining sum or integral: both tails are summed or integrated for themselves, none is the
complement of the other. scipy gives a second opinion; its relative difference stands in the last column. Arguments are taken as the exact
doubles they are written as.

Where scipy is wrong the mpmath value stands alone: noncentral t below about 1e-220 and for negative t (7e-9); R's pt with ncp is off by up
to 7 % for |ncp| above 37.62 and loses its upper tail by subtraction, so R is no oracle for it at all.
"""
import csv
import sys

import mpmath
import scipy
from mpmath import mp, mpf
from scipy import special, stats

mp.dps = 40
TINY = mpf(10) ** -32


def outward(first, ratio):
    """first · (1 + r1 + r1·r2 + …) until the rest cannot matter."""
    total, term, step = mpf(0), first, 0
    while term != 0:
        total += term
        falls = ratio(step)
        if falls < 1 and term * falls < TINY * (1 - falls) * total:
            break
        term *= falls
        step += 1
    return total


def log_choose(n, k):
    return mp.loggamma(mpf(n) + 1) - mp.loggamma(mpf(k) + 1) - mp.loggamma(mpf(n - k) + 1)


def binomial(k, n, p):
    p = mpf(p)
    weight = lambda j: mpf(0) if j < 0 or j > n else p**j * (1 - p) ** (n - j) * mp.exp(log_choose(n, j))
    down = outward(weight(min(k, n)), lambda s: mpf(min(k, n) - s) / (n - min(k, n) + s + 1) * (1 - p) / p) if p else mpf(1)
    up = outward(weight(max(k + 1, 0)), lambda s: mpf(n - max(k + 1, 0) - s) / (max(k + 1, 0) + s + 1) * p / (1 - p) if p < 1 else mpf(0))
    return weight(k), down if k >= 0 else mpf(0), up if k < n else mpf(0)


def hypergeometric(k, n, N, D):
    least, most = max(0, n + D - N), min(n, D)
    weight = lambda j: mpf(0) if j < least or j > most else mp.exp(log_choose(D, j) + log_choose(N - D, n - j) - log_choose(N, n))
    low, high = min(k, most), max(k + 1, least)
    down = outward(weight(low), lambda s: mpf((low - s) * (N - D - n + low - s)) / ((D - low + s + 1) * (n - low + s + 1)))
    up = outward(weight(high), lambda s: mpf((D - high - s) * (n - high - s)) / ((high + s + 1) * (N - D - n + high + s + 1)))
    return weight(k), down if k >= least else mpf(0), up if k < most else mpf(0)


def poisson(k, mean):
    m = mpf(mean)
    weight = lambda j: mpf(0) if j < 0 else m**j * mp.exp(-m - mp.loggamma(mpf(j) + 1))
    down = outward(weight(k), lambda s: mpf(k - s) / m) if m else mpf(1)
    high = max(k + 1, 0)
    return weight(k), down if k >= 0 else mpf(0), outward(weight(high), lambda s: m / (high + s + 1))


def one_tail(log_density, slope, start, spread, side):
    """Integral of exp(log_density) from `start` outwards on one side, over panels no wider than the density's own scale there; it has one hump about as wide as `spread`."""
    total, at = mpf(0), start
    while True:
        steep = abs(slope(at))
        width = min(spread / 2, 3 / steep) if steep else spread / 2
        here = log_density(at)  # taken out, because quad judges its error against 1
        part = mp.quad(lambda s: mp.exp(log_density(at + side * s) - here), [0, width]) * mp.exp(here)
        total += part
        at += side * width
        if slope(at) * side < 0 and part < total * TINY:
            return total


def tails(law, start, spread):
    return [one_tail(*law, start, spread, side) for side in (-1, 1)]


def beta_law(a, b):
    """Log-density and slope of ln(x / (1 - x)), the hump's width."""
    constant = mp.loggamma(a + b) - mp.loggamma(a) - mp.loggamma(b)
    density = lambda at: constant - a * mp.log1p(mp.exp(-at)) - b * mp.log1p(mp.exp(at))
    return (density, lambda at: a / (1 + mp.exp(at)) - b / (1 + mp.exp(-at))), mp.sqrt((a + b) / (a * b))


def gamma_law(a):
    """Log-density and slope of ln x, the hump's width."""
    constant = mp.loggamma(a)
    return (lambda at: a * at - mp.exp(at) - constant, lambda at: a - mp.exp(at)), 1 / mp.sqrt(a)


def beta(x, a, b):
    return beta_of_odds(mpf(x) / (1 - mpf(x)), mpf(a), mpf(b))


def beta_of_odds(odds, a, b):
    law, spread = beta_law(a, b)
    return tails(law, mp.log(odds), spread)


def gamma(a, x):
    law, spread = gamma_law(mpf(a))
    return tails(law, mp.log(mpf(x)), spread)


def student(t, df):
    t, df = mpf(t), mpf(df)
    if t == 0:
        return mpf(1) / 2, mpf(1) / 2
    far = beta_of_odds(df / (t * t), df / 2, mpf(1) / 2)
    tail, rest = far[0] / 2, (1 + far[1]) / 2
    return (tail, rest) if t < 0 else (rest, tail)


def noncentral_t(t, df, delta):
    return [noncentral_lower(mpf(t), mpf(df), mpf(delta)), noncentral_lower(-mpf(t), mpf(df), -mpf(delta))]


def noncentral_lower(t, df, delta):
    constant = mp.log(2) + df / 2 * mp.log(df / 2) - mp.loggamma(df / 2)
    integrand = lambda u: mp.ncdf(t * mp.exp(u) - delta) * mp.exp(constant + df * u - df / 2 * mp.exp(2 * u))
    height = lambda u: mp.log(integrand(u))
    low, high = mpf(-40), mpf(8)
    with mp.workdps(20):
        for _ in range(90):  # one hump: thirds close in on it
            third = (high - low) / 3
            if height(low + third) < height(high - third):
                low += third
            else:
                high -= third
        mode, top = low, height(low)
        edges = []
        for side in (-1, 1):
            reach = 1 / mp.sqrt(2 * df) / 64
            while height(mode + side * reach) > top - 75:
                reach *= mpf('1.2')
            edges.append(reach)
    left, right = edges
    peak = integrand(mode)  # taken out, because quad judges its error against 1
    return peak * mp.quad(lambda u: integrand(u) / peak, mp.linspace(mode - left, mode, 13) + mp.linspace(mode, mode + right, 13)[1:])


def quantile(law_and_spread, start, probability):
    """Newton steps on the logarithm of the lower tail, which is concave: whatever the start, they come to the root from below."""
    (density, slope), spread = law_and_spread
    at = mpf(start)
    for _ in range(60):
        tail = one_tail(density, slope, at, spread, -1)
        step = (mp.log(mpf(probability)) - mp.log(tail)) * tail / mp.exp(density(at))
        at += step
        if abs(step) < mpf(10) ** -25 * max(1, abs(at)):
            return at
    raise ValueError('no quantile near %s' % start)


def root(value_of, start, step):
    """Place where value_of is 0, by the secant rule, until a step changes nothing in 25 digits."""
    here, before = mpf(start), mpf(start) * (1 + mpf(step)) if start else mpf(step)
    value, value_before = value_of(here), value_of(before)
    for _ in range(60):
        if value == value_before:
            return here
        here, before, value_before = here - value * (here - before) / (value - value_before), here, value
        if abs(here - before) < abs(here) * mpf(10) ** -25:
            return here
        value = value_of(here)
    raise ValueError('no root near %s' % start)


rows = []


def add(name, arguments, value, opinion=None):
    difference = '' if opinion is None or value == 0 or abs(value) < mpf(10) ** -300 else '%.1e' % float(abs(mpf(float(opinion)) / value - 1))
    rows.append([name, *(list(map(repr, arguments)) + [''] * 4)[:4], mp.nstr(value, 25) if value else '0', difference])


def add_three(name, arguments, values, opinions):
    for suffix, value, opinion in zip(('Exactly', 'AtMost', 'MoreThan'), values, opinions):
        add(name + suffix, arguments, value, opinion)


E9 = 10**9
for k, n, p in [
    (0, 1, 0.3), (1, 2, 0.5), (2, 80, 0.025), (-1, 10, 0.2), (10, 10, 0.2), (11, 10, 0.2), (9, 10, 0.2), (0, 0, 0.5), (3, 5, 0.0), (0, 5, 0.0), (5, 5, 1.0), (4, 5, 1.0),
    (0, 2000, 0.28), (1999, 2000, 0.72), (1, 2000, 1e-150), (0, 10, 1e-290), (21, 2000, 0.01), (700, 1000, 0.2), (12, 5000, 0.001), (4990, 5000, 0.999),
    (0, 10**6, 6.5e-4), (20, 10**6, 1e-5), (500500, 10**6, 0.5), (482000, 10**6, 0.5), (5 * E9 // 10, E9, 0.5), (5 * E9 // 10 - 60000, E9, 0.5), (499440000, E9, 0.5), (500560000, E9, 0.5),
    (1000, E9, 1e-6), (1500, E9, 1e-6), (2700, E9, 1e-6), (200, E9, 1e-6), (0, E9, 6e-7), (0, E9, 1e-12), (999999999, E9, 0.999999999), (999999990, E9, 0.999999999),
    (123456, E9, 1.2e-4), (3 * E9 // 10, E9, 0.3), (3 * E9 // 10 + 14000, E9, 0.3), (700000000 - 500000, E9, 0.7),
]:
    law = stats.binom(n, p)
    add_three('binomial', (k, n, p), binomial(k, n, p), (law.pmf(k), law.cdf(k), law.sf(k)))

for k, n, N, D in [
    (0, 0, 10, 3), (3, 10, 10, 3), (2, 10, 10, 3), (4, 10, 10, 3), (0, 5, 20, 0), (-1, 5, 20, 2), (5, 5, 20, 20), (4, 5, 20, 20), (3, 8, 10, 6), (4, 8, 10, 6), (6, 8, 10, 6), (7, 8, 10, 6), (0, 1, 1, 1), (1, 1, 1, 1),
    (3, 80, 1200, 30), (0, 800, 1000, 400), (5, 5000, 10**6, 700), (0, 5000, 10**6, 120000), (250, 5000, 10**6, 50000), (600, 5000, 10**6, 50000), (0, 5000, 10**6, 1), (4000, 5000, 10**6, 999000),
    (200, 999800, 10**6, 201), (250000000, 500000000, E9, 500000000), (249710000, 500000000, E9, 500000000), (250290000, 500000000, E9, 500000000), (250030000, 500000000, E9, 500000000),
    (10, 1000, E9, 10**7), (0, 1000, E9, 400000000), (0, 10**6, E9, 600000), (1000, 10**6, E9, 10**6), (1400, 10**6, E9, 10**6), (2150, 10**6, E9, 10**6), (999, 1000, E9, E9 - 1), (998, 1000, E9, E9 - 1),
    (900000000, E9 - 1, E9, 900000000), (899999999, E9 - 1, E9, 900000000), (5000, 123456789, E9, 40000), (100000000, 300000000, E9, 333333333),
]:
    law = stats.hypergeom(N, D, n)
    add_three('hypergeometric', (k, n, N, D), hypergeometric(k, n, N, D), (law.pmf(k), law.cdf(k), law.sf(k)))

for k, mean in [
    (0, 0.0), (3, 0.0), (-1, 3.0), (0, 0.13), (21, 12.5), (0, 50.0), (0, 660.0), (3, 660.0), (1, 1e-140), (5, 1e-45), (5, 5.0), (4, 5.0), (200, 20.0), (30, 1e-3), (10**6, 1e6), (999000, 1e6), (1040000, 1e6),
    (E9, 1e9), (E9 - 1, 1e9), (E9 + 300000, 1e9), (E9 - 1100000, 1e9), (E9 + 1100000, 1e9), (1, 1e9), (10**12, 1e9),
]:
    law = stats.poisson(mean)
    add_three('poisson', (k, mean), poisson(k, mean) if mean < 1 or k > mean / 9 and k < 9 * mean or mean < 1e6 else (mpf(0), mpf(k > mean), mpf(k < mean)), (law.pmf(k), law.cdf(k), law.sf(k)))

for x, a, b in [
    (0.3, 0.5, 0.5), (1e-280, 0.5, 0.5), (0.999999999, 0.5, 0.5), (0.2, 1.0, 1.0), (0.05, 4.0, 47.0), (0.3, 0.5, 700.5), (1e-9, 0.5, 1e9), (3e-7, 0.5, 1e9), (0.01, 100.0, 3.0), (0.9, 50.0, 2.5), (0.999, 1000.0, 0.5), (0.9999999, 1e6, 0.5),
    (0.2, 1000000.5, 4e6), (0.2001, 1000000.5, 4e6), (0.193, 1000000.5, 4e6), (1e-5, 1.0, 1e6), (6e-7, 1.0, 1e9), (0.5, 5e8, 5e8), (0.50002, 5e8, 5e8), (0.49945, 5e8, 5e8), (1e-6, 1000.0, 1e9), (1.4e-6, 1000.0, 1e9), (0.999999, 1e9, 1000.5), (0.4, 31.5, 31.5), (0.7, 0.5, 3.0), (0.5, 0.75, 20000.0),
]:
    below, above = beta(x, a, b)
    add('betaBelow', (x, a, b), below, stats.beta.cdf(x, a, b))
    add('betaAbove', (x, a, b), above, stats.beta.sf(x, a, b))

for a, x in [(0.5, 0.1), (0.5, 1e-290), (0.5, 300.0), (0.5, 680.0), (1.0, 650.0), (1.0, 1e-10), (3.5, 3.5), (10.5, 1e-20), (1000.0, 500.0), (1000.0, 1500.0), (1e6, 1e6), (1e6, 966000.0), (1e9, 1e9), (1e9, 1001100000.0), (1e9, 998900000.0), (999999999.5, 1000000001.0), (1e9, 1000050000.0)]:
    below, above = gamma(a, x)
    add('gammaBelow', (a, x), below, special.gammainc(a, x))
    add('gammaAbove', (a, x), above, special.gammaincc(a, x))

for x, df in [(3.84, 1.0), (0.01, 1.0), (1200.0, 2.5), (30.0, 29.0), (1e9, 1e9)]:
    below, above = gamma(df / 2, x / 2)
    add('chiSquareBelow', (x, df), below, stats.chi2.cdf(x, df))
    add('chiSquareAbove', (x, df), above, stats.chi2.sf(x, df))

for probability, df in [(0.05, 1.0), (0.5, 2.5), (0.95, 3.0), (1e-200, 3.0), (1e-300, 9.0), (0.9999999999, 99.0), (0.025, 1e6), (0.975, 1e6), (1e-50, 1000.0), (0.3, 1e9)]:
    start = stats.chi2.ppf(probability, df)
    log_x = quantile(gamma_law(mpf(df) / 2), mp.log(mpf(start) / 2), probability)
    add('chiSquareAt', (probability, df), 2 * mp.exp(log_x), start)

for probability, a, b in [(0.025, 4.0, 47.0), (0.975, 4.0, 47.0), (0.5, 0.5, 0.5), (0.999999, 0.5, 40.0), (1e-250, 5.0, 96.0), (1e-10, 5.0, 96.0), (0.025, 50.0, 999951.0), (0.975, 500001.0, 500000.0), (0.025, 1000.0, 999999001.0), (0.95, 1.0, 1e9), (0.05, 5e8, 5e8)]:
    start = stats.beta.ppf(probability, a, b)
    log_odds = quantile(beta_law(mpf(a), mpf(b)), mp.log(mpf(a) / mpf(b)), probability)
    add('betaAt', (probability, a, b), 1 / (1 + mp.exp(-log_odds)), start)

for z in (-37.0, -30.123, -20.7, -8.3, -3.3, -2.0000001, -2.0, -1.9999, -0.5, -1e-10, 0.0, 1e-8, 1.0, 2.5, 5.0, 8.0, 20.0, 37.0):
    add('normalBelow', (z,), mp.ncdf(mpf(z)), special.ndtr(z))
    add('normalAbove', (z,), mp.ncdf(-mpf(z)), special.ndtr(-z))

for probability in (5e-324, 1e-300, 1e-100, 1e-17, 1e-8, 0.001, 0.1, 0.1499999, 0.15, 0.1500001, 0.3, 0.4999999999, 0.7, 0.86, 0.999999, 0.9999999999999):
    start = special.ndtri(probability)
    add('normalAt', (probability,), root(lambda z: mp.log(mp.ncdf(z)) - mp.log(mpf(probability)), start, 1e-9), start)

for t, df in [(-1.5, 1.0), (1e-10, 3.0), (-1e100, 2.0), (-1e150, 1.0), (-40.0, 5.0), (-37.0, 1e6), (-37.0, 1e9), (3.0, 1e9), (0.0, 5.0), (2.0, 2.5), (1.0, 1.0), (-0.999, 100.0), (-1e20, 12.0), (15.0, 300.0)]:
    below, above = student(t, df)
    add('studentBelow', (t, df), below, stats.t.cdf(t, df))
    add('studentAbove', (t, df), above, stats.t.sf(t, df))

for probability, df in [(0.025, 4.0), (0.4999999, 3.0), (0.9, 7.5), (1e-10, 1e6), (0.025, 1e9), (1e-290, 5.0), (1e-120, 1.0), (0.999, 1.0)]:
    start = stats.t.ppf(probability, df)
    tail = 2 * min(mpf(probability), 1 - mpf(probability))
    log_odds = quantile(beta_law(mpf(df) / 2, mpf(1) / 2), mp.log(mpf(df)), tail)
    add('studentAt', (probability, df), (-1 if probability < 0.5 else 1) * mp.sqrt(df * mp.exp(-log_odds)), start)

for f, above, below in [(1.0, 1.0, 1.0), (0.4337, 18.0, 60.0), (34.44, 2.0, 78.0), (245.6, 9.0, 78.0), (1e-12, 3.0, 7.0), (1e12, 2.0, 5.0), (1.0001, 1e6, 1e6), (0.99, 1e9, 1e9), (3.1, 2.5, 40.0), (1e100, 1.0, 4.0), (21.0, 8.0, 180.0), (2001.0, 8.0, 18000.0)]:
    below_f, above_f = beta_of_odds(mpf(above) * mpf(f) / mpf(below), mpf(above) / 2, mpf(below) / 2)
    add('fisherBelow', (f, above, below), below_f, stats.f.cdf(f, above, below))
    add('fisherAbove', (f, above, below), above_f, stats.f.sf(f, above, below))

for probability, above, below in [(0.05, 9.0, 18.0), (0.95, 9.0, 18.0), (0.975, 2.0, 4.0), (0.5, 1.0, 1.0), (1e-200, 4.0, 6.0), (0.999999999, 2.5, 30.0), (0.025, 1e6, 10.0), (0.3, 1e9, 1e9)]:
    log_odds = quantile(beta_law(mpf(above) / 2, mpf(below) / 2), mp.log(mpf(above) / mpf(below)), probability)
    add('fisherAt', (probability, above, below), mpf(below) / mpf(above) * mp.exp(log_odds), stats.f.ppf(probability, above, below))

NONCENTRAL = [
    (1.9398969044771428, 2.0, 3.3947572022285155), (9.25, 24.0, 11.631739370204205), (42.002142802480925, 199.0, 47.415678504436528), (-5.0, 10.0, 3.0), (-40.0, 20.0, -35.0), (1000.0, 1e5, 1002.0), (0.0, 10.0, 2.0), (0.0, 5.0, 36.0), (1e-3, 3.0, -5.0), (2.0, 1.0, 0.0),
    (-3.0, 1.0, 4.0), (100.0, 4.0, 30.0), (1000.0, 1.0, 3.0), (30.0, 50.0, 80.0), (80.0, 50.0, 30.0), (5.0, 1e6, 20.0), (5.0, 1e6, 40.0), (6000.0, 1e6, 6010.0), (1e5, 1e9, 1e5), (-5.0, 100.0, 15.0), (0.5, 2.5, 0.1), (-1000.0, 2.0, 5.0), (-20.0, 200.0, 18.0), (1e6, 3.0, 5.0), (-1e6, 3.0, -5.0),
    (1e6, 1e9, 1e6), (30.0, 3.0, 170.0), (3.0, 1e9, 1.0), (0.01, 1.0, 30.0), (60.0, 12.0, -4.0),
]
for t, df, delta in NONCENTRAL:
    below, above = noncentral_t(t, df, delta)
    law = stats.nct(df, delta)
    add('noncentralTBelow', (t, df, delta), below, law.cdf(t))
    add('noncentralTAbove', (t, df, delta), above, law.sf(t))

for probability, df, delta in [(0.95, 9.0, 5.2017), (0.05, 34.0, 9.3), (0.5, 2.0, 3.0), (1e-6, 20.0, 4.0), (0.99999999, 20.0, 4.0), (0.9, 1.0, 0.5), (0.1, 199.0, 47.4), (0.95, 100000.0, 700.0), (0.05, 3.0, -8.0)]:
    start = stats.nct.ppf(probability, df, delta)
    add('noncentralTAt', (probability, df, delta), root(lambda t: mp.log(noncentral_lower(t, mpf(df), mpf(delta))) - mp.log(mpf(probability)), start, 1e-7))

for x in (1e-300, 0.001, 0.3, 0.4999, 0.5, 0.999999, 1.0, 1.0000001, 1.4, 1.5, 1.9999999, 2.0, 2.3, 2.5, 7.5, 30.0, 1000.5, 1e9, 1e300):
    add('logGamma', (x,), mp.loggamma(mpf(x)), special.gammaln(x))
for n, k in [(0, 0), (1, 1), (2, 1), (52, 5), (1000, 500), (10**6, 1), (E9, 500000000), (E9, E9 - 1), (E9, 3), (E9, 0)]:
    add('logChoose', (n, k), log_choose(n, k) if 0 < k < n else mpf(0))

out = csv.writer(sys.stdout, lineterminator='\n')
out.writerow(['function', 'arg1', 'arg2', 'arg3', 'arg4', 'mpmath %s' % mpmath.__version__, 'scipy %s differs by' % scipy.__version__])
out.writerows(rows)
