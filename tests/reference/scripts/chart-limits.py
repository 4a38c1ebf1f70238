"""Makes tests/reference/data/chart-exact-limits.csv: exact limits of charts of counts, by scipy.stats.binom and scipy.stats.poisson.

    python3 chart-limits.py > ../data/chart-exact-limits.csv

upper: the least count at or above the mean that is passed with 0.00135 at most; lower: the greatest at or below it of which fewer are
found with 0.00135 at most, empty where that is 0. The distribution function is asked at every count.
"""
import csv
import math
import sys

from scipy import stats

rows = csv.writer(sys.stdout, lineterminator='\n')
rows.writerow(['law', 'of', 'centre', 'lower', 'upper'])
for law, of, centre in [('binom', 100, 0.05), ('binom', 500, 0.1), ('binom', 32, 0.02), ('binom', 1250, 0.6), ('poisson', 1, 20), ('poisson', 50, 0.02), ('poisson', 80, 0.75), ('poisson', 1000, 1.3)]:
    mean = of * centre
    dist = stats.binom(of, centre) if law == 'binom' else stats.poisson(mean)
    start = math.floor(mean)
    upper = next(k for k in range(start, start + 10_000) if dist.sf(k) <= 0.00135)
    lower = next(k for k in range(start, -1, -1) if k == 0 or dist.cdf(k - 1) <= 0.00135)
    rows.writerow([law, of, centre, '' if lower == 0 else lower, upper])
