"""Makes tests/reference/data/chart-constants-scipy.csv: c4, d2 and d3 for samples beyond the table, and by another way than the code.

    python3 chart-constants.py > ../data/chart-constants-scipy.csv

d2 and d3 from the joint moments of the least and the greatest value, scipy.integrate.quad over E max, E max^2 and, for the product,
E(min * max) by quad over the conditional mean of the greatest given the least. The code integrates the distribution of the range.
c4 by scipy.special.gammaln.
"""
import csv
import sys

import numpy as np
from scipy import integrate, special, stats


def moments(n):
    phi, Phi = stats.norm.pdf, stats.norm.cdf
    opts = dict(epsabs=1e-14, epsrel=1e-13, limit=400)
    first = integrate.quad(lambda x: x * n * phi(x) * Phi(x) ** (n - 1), -12, 12, points=[0, 2, 3], **opts)[0]
    second = integrate.quad(lambda x: x * x * n * phi(x) * Phi(x) ** (n - 1), -12, 12, points=[0, 2, 3], **opts)[0]

    def given(x):
        # integral over y > x of y * phi(y) * (Phi(y) - Phi(x))^(n-2)
        return integrate.quad(lambda y: y * phi(y) * (Phi(y) - Phi(x)) ** (n - 2), x, 12, points=[max(x, 0), max(x, 2.5)], **opts)[0]

    product = n * (n - 1) * integrate.quad(lambda x: x * phi(x) * given(x), -12, 12, points=[-3, -2, 0], epsabs=1e-12, epsrel=1e-12, limit=400)[0]
    d2 = 2 * first
    return d2, np.sqrt(2 * second - 2 * product - d2 * d2)


rows = csv.writer(sys.stdout, lineterminator='\n')
rows.writerow(['n', 'c4', 'd2', 'd3'])
for n in (2, 3, 10, 25, 30, 50, 100, 300):
    c4 = np.sqrt(2 / (n - 1)) * np.exp(special.gammaln(n / 2) - special.gammaln((n - 1) / 2))
    d2, d3 = moments(n)
    rows.writerow([n, f'{c4:.12f}', f'{d2:.11f}', f'{d3:.10f}'])
