"""Makes tests/reference/data/capability-checks.csv: intervals of capability indices by scipy.

    python3 capability.py > ../data/capability-checks.csv

Cp: scipy.stats.chi2.ppf. CPU: the noncentralities at which scipy.stats.nct puts half of 1 - confidence above (below) what was seen,
by scipy.optimize.brentq. Share beyond one limit: scipy.stats.norm.sf of those. Cpk: Bissell's approximation by scipy.stats.norm.ppf.
"""
import csv
import sys

import numpy as np
from scipy import optimize, stats


rows = csv.writer(sys.stdout, lineterminator='\n')
rows.writerow(['mean', 's', 'values', 'df', 'lower', 'upper', 'confidence', 'cp', 'cp_low', 'cp_high', 'cpu', 'cpu_low', 'cpu_high', 'cpk', 'cpk_low', 'cpk_high', 'share', 'share_low', 'share_high'])
for mean, s, values, df, confidence in [(16, 2, 20, 19, 0.95), (16, 2, 30, 29, 0.95), (16, 2, 50, 49, 0.95), (16, 2, 100, 99, 0.95), (13, 1.2, 60, 48, 0.9), (19.5, 0.7, 12, 11, 0.99), (14, 1, 500, 400, 0.95), (21, 2, 25, 24, 0.95)]:
    lower, upper = 8, 20
    side = (1 - confidence) / 2
    cp = (upper - lower) / (6 * s)
    distance = (upper - mean) / s
    t = distance * np.sqrt(values)
    span = 5 + abs(t) * 0.5
    low = optimize.brentq(lambda d: stats.nct.sf(t, df, d) - side, t - span, t + span, xtol=1e-12, rtol=1e-14) / np.sqrt(values)
    high = optimize.brentq(lambda d: stats.nct.cdf(t, df, d) - side, t - span, t + span, xtol=1e-12, rtol=1e-14) / np.sqrt(values)
    cpk = min(upper - mean, mean - lower) / (3 * s)
    half = stats.norm.ppf(1 - side) * np.sqrt(1 / (9 * values) + cpk ** 2 / (2 * df))
    figures = [cp, cp * np.sqrt(stats.chi2.ppf(side, df) / df), cp * np.sqrt(stats.chi2.ppf(1 - side, df) / df), distance / 3, low / 3, high / 3,
               cpk, cpk - half, cpk + half, stats.norm.sf(distance), stats.norm.sf(high), stats.norm.sf(low)]
    rows.writerow([mean, s, values, df, lower, upper, confidence] + [f'{figure:.12g}' for figure in figures])
