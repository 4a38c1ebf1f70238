"""Makes tests/reference/data/variables-two-limits.csv: probability of acceptance by the M form with two limits, s and known sigma.

    python3 variables-two-limits.py > ../data/variables-two-limits.csv

mpmath, 25 digits. The process mean is integrated out for a given sample mean instead of s: P = integral over the sample mean x of its
normal density times P(s accepted | x), where the largest accepted s at x is found by bisection on the estimate, which rises with s, and
P(s below it) is the chi-square distribution. The code under test integrates the other way round, so the two share no step. Limits at
-1 and 1. For n = 3 the accepted s at x need not begin at 0 nor be one interval, so n begins at 4 here.
"""
import sys

import mpmath
from mpmath import mp, mpf

mp.dps = 25


def tail(q, n):
    a = mpf(n) / 2 - 1
    x = mpf(1) / 2 - q * mp.sqrt(n) / (2 * (n - 1))
    return mpf(1) if x >= 1 else mpf(0) if x <= 0 else mp.betainc(a, a, 0, x, regularized=True)


def accepted(x, s, n, rule):
    low, high = tail((x + 1) / s, n), tail((1 - x) / s, n)
    return low <= rule[0] and high <= rule[1] and low + high <= max(rule)


def largest_s(x, n, rule):
    if abs(x) >= 1:
        return mpf(0)
    low, high = mpf(0), mpf(64)
    for _ in range(90):
        middle = (low + high) / 2
        if accepted(x, middle, n, rule):
            low = middle
        else:
            high = middle
    return low


def pa(n, rule, mu, sigma):
    def weight(x):
        s = largest_s(x, n, rule)
        z = (x - mu) / sigma * mp.sqrt(n)
        return mp.npdf(z) * mp.gammainc(mpf(n - 1) / 2, 0, (n - 1) * (s / sigma) ** 2 / 2, regularized=True)

    reach = 12 / mp.sqrt(n)
    low, high = max(mpf(-1), mu - reach * sigma), min(mpf(1), mu + reach * sigma)
    kinks = [mpf(0)]
    if rule[0] != rule[1]:
        # Where the side with the smaller M hands over to the sum of both: found by bisection.
        a, b = mpf(-1), mpf(1)
        def side(x):
            s = largest_s(x, n, rule) * (1 + mpf(10) ** -18)
            return tail((x + 1) / s, n) > rule[0] if rule[0] < rule[1] else tail((1 - x) / s, n) > rule[1]
        starts = side(-1 + mpf(10) ** -6)
        for _ in range(60):
            middle = (a + b) / 2
            if side(middle) == starts:
                a = middle
            else:
                b = middle
        kinks.append(a)
    edge = mpf(n - 1) / mp.sqrt(n)
    # Where the estimate of the far side leaves 0.
    for m in set(rule):
        lo, hi = mpf(-edge), mpf(edge)
        for _ in range(90):
            middle = (lo + hi) / 2
            if tail(middle, n) > m:
                lo = middle
            else:
                hi = middle
        s = 2 / (lo + edge)
        kinks += [-1 + lo * s, 1 - lo * s]
    points = sorted({low, high, *[k for k in kinks if low < k < high]} | {p for p in (mu - 2 * sigma / mp.sqrt(n), mu + 2 * sigma / mp.sqrt(n)) if low < p < high})
    return mp.quad(weight, points) / sigma * mp.sqrt(n)


def main():
    out = sys.stdout
    out.write("n,M_lower,M_upper,mu,sigma,p_lower,p_upper,Pa\n")
    cases = [
        (4, ("0.0553", "0.0553"), "0.1", "0.35"), (5, ("0.0332", "0.0332"), "0", "0.3"), (5, ("0.0332", "0.0332"), "0.2", "0.3"),
        (7, ("0.0535", "0.0535"), "-0.3", "0.4"), (10, ("0.0326", "0.0326"), "0", "0.35"), (25, ("0.0286", "0.0286"), "0.25", "0.3"),
        (5, ("0.0980", "0.0332"), "0.1", "0.35"), (10, ("0.0729", "0.0217"), "0", "0.4"), (10, ("0.0326", "0.2757"), "-0.1", "0.45"),
    ]
    for n, rule, mu, sigma in cases:
        rule, mu, sigma = [mpf(m) for m in rule], mpf(mu), mpf(sigma)
        lower, upper = mp.ncdf((-1 - mu) / sigma), mp.ncdf((mu - 1) / sigma)
        value = pa(n, rule, mu, sigma)
        out.write(",".join([str(n), *[mpmath.nstr(m, 5) for m in rule], *[mpmath.nstr(v, 5) for v in (mu, sigma)], *[mpmath.nstr(v, 17) for v in (lower, upper, value)]]) + "\n")
        out.flush()


main()
