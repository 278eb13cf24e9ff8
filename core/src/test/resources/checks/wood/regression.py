"""Makes regression-readings.csv and regression-answers.csv: python3 regression.py, with Debian's python3-sklearn."""
import csv

import numpy as np
import sklearn
from sklearn.gaussian_process import GaussianProcessRegressor
from sklearn.gaussian_process.kernels import ConstantKernel, Matern, WhiteKernel

MEAN, SPREAD, ALONG, ACROSS, HAND = 4.0, 12.0, 150.0, 60.0, 1.5
rng = np.random.default_rng(7)
points = np.column_stack([rng.uniform(0, 900, 24), rng.uniform(0, 140, 24)]).round(1)
depths = (20 * np.exp(-points[:, 0] / 250) + rng.normal(0, 1.5, 24)).round(1)
asked = np.array([[0, 0], [50, 70], [120, 20], [333, 100], [600, 70], [899, 139], [1500, 70]], float)

with open("regression-readings.csv", "w") as out:
    out.write("# source: invented readings, seed 7\n# where: regression.py beside this file\n# known: computed\n# checks: test sillwright.wood.DecayFieldTest\n")
    write = csv.writer(out, lineterminator="\n")
    write.writerow(["along_mm", "across_mm", "depth_mm"])
    write.writerows([*p, d] for p, d in zip(points, depths))
with open("regression-answers.csv", "w") as out:
    out.write(f"# source: scikit-learn {sklearn.__version__}, GaussianProcessRegressor with Matern\n# where: regression.py beside this file\n"
              "# known: computed\n# checks: test sillwright.wood.DecayFieldTest\n")
    write = csv.writer(out, lineterminator="\n")
    write.writerow(["shape", "what", "along_mm", "across_mm", "mean_mm", "deviation_mm"])
    for shape, nu in (("MATERN_5_2", 2.5), ("MATERN_3_2", 1.5)):
        kernel = ConstantKernel(SPREAD**2, "fixed") * Matern([ALONG, ACROSS], "fixed", nu=nu) + WhiteKernel(HAND**2, "fixed")
        model = GaussianProcessRegressor(kernel, alpha=0, optimizer=None).fit(points, depths - MEAN)
        mean, deviation = model.predict(asked, return_std=True)
        deviation = np.sqrt(deviation**2 - HAND**2)  # of the field, without the noise of one more push
        for p, m, d in zip(asked, mean + MEAN, deviation):
            write.writerow([shape, "field", *p, repr(float(m)), repr(float(d))])
        write.writerow([shape, "evidence", 0, 0, repr(float(model.log_marginal_likelihood())), 0])
