# Writes trend-answers.csv and trend-series.csv beside it: seeded series and what SciPy makes of them. Run: python3 trend.py
# Times are in years, values in any unit; seasonal series have two values a year, spring and autumn, some of them missing.
import itertools
import os
import numpy as np
import scipy
from scipy import stats
from scipy.stats import mstats

here = os.path.dirname(os.path.abspath(__file__))
rng = np.random.default_rng(1945)
series, answers = [], []
head = "# source: SciPy %s\n# where: %s\n# known: computed\n# checks: test sillwright.watch.trend.TrendTest\n"


def say(name, times, values):
    for i, (t, v) in enumerate(zip(times, values)):
        series.append(f"{name},{i},{t:.6f},{v:.6f}" if not np.isnan(v) else f"{name},{i},{t:.6f},")


def pettitt(x):
    n = len(x)
    u = [abs(2 * stats.mannwhitneyu(x[:t], x[t:]).statistic - t * (n - t)) for t in range(1, n)]
    return int(round(max(u))), int(np.argmax(u)) + 1


for case in range(12):
    n = [4, 5, 6, 8, 10, 10, 12, 20, 40, 9, 15, 30][case]
    times = np.round(np.sort(rng.uniform(0, 6, n)), 6)
    values = np.round(rng.normal(0.16, 0.02, n) + rng.normal(0, 0.01) * times, 2 if case in (9, 10, 11) else 6)
    say(f"plain-{case}", times, values)
    sen = stats.theilslopes(values, times, 0.95)
    ties = len(set(values)) < n
    tau = stats.kendalltau(times, values, method="asymptotic" if ties else "exact")
    k, at = pettitt(values)
    s = int(sum(np.sign(values[j] - values[i]) for i in range(n) for j in range(i + 1, n)))
    # With ties SciPy leaves out the correction for continuity, which the test here makes: only its variance is compared, through z.
    z = (abs(s) - 1) / abs(s) * abs(stats.norm.isf(tau.pvalue / 2)) if ties and s else 0
    p = tau.pvalue if not ties else 2 * stats.norm.sf(max(z, 0)) if s else 1.0
    answers.append(f"plain-{case},slope,{sen[0]:.12g}")
    answers.append(f"plain-{case},low,{sen[2]:.12g}")
    answers.append(f"plain-{case},high,{sen[3]:.12g}")
    answers.append(f"plain-{case},p,{p:.12g}")
    answers.append(f"plain-{case},breakK,{k}")
    answers.append(f"plain-{case},breakAt,{at}")

for case in range(8):
    years = [4, 5, 5, 6, 8, 10, 5, 7][case]
    x = rng.normal(0.15, 0.015, (years, 2)) + np.array([0.02, -0.02]) + rng.normal(0, 0.008) * np.arange(years)[:, None] + rng.normal(0, 0.01, years)[:, None]
    x = np.round(x, 2 if case == 7 else 6)
    if case in (5, 6): x[rng.integers(years), rng.integers(2)] = np.nan
    say(f"seasonal-{case}", np.repeat(np.arange(years), 2) + np.tile([0.3, 0.85], years), x.ravel())
    out = mstats.kendalltau_seasonal(np.ma.masked_invalid(x))
    answers.append(f"seasonal-{case},p,{float(out['global p-value (dep)']):.12g}")
    answers.append(f"seasonal-{case},pApart,{float(out['global p-value (indep)']):.12g}")

for n in (4, 5, 6, 7):
    ks = [max(abs(sum(2 * r - (n - 1) for r in order[:t])) for t in range(1, n)) for order in itertools.permutations(range(n))]
    for k in sorted(set(ks)): answers.append(f"orders-{n},{k},{sum(one >= k for one in ks) / len(ks):.12g}")

with open(os.path.join(here, "trend-series.csv"), "w") as file:
    file.write(head % (scipy.__version__, "series that trend-answers.csv is of; written by trend.py") + "series,at,time,value\n" + "\n".join(series) + "\n")
with open(os.path.join(here, "trend-answers.csv"), "w") as file:
    file.write(head % (scipy.__version__, "stats.theilslopes, kendalltau, mannwhitneyu and mstats.kendalltau_seasonal; orders: counted over all orders; written by trend.py")
               + "series,what,expected\n" + "\n".join(answers) + "\n")
