"""Makes bounds-answers.csv: python3 bounds.py, with Debian's python3-numpy and python3-scipy. A long plain Gibbs run over the latent depths of a few readings,
floor and ceiling kept exactly: 200,000 rounds after 2,000, for the field at a few places. Nothing of it is shared with what it checks."""
import numpy as np
import scipy
from scipy.special import ndtr, ndtri

SEED, ROUNDS, BURN = 20261125, 200_000, 2_000
MEAN, SPREAD, ALONG, ACROSS, HAND = -32.0, 20.0, 150.0, 60.0, 1.5
CASES = {
    "foot": [(40, 35, 62, "exact"), (60, 105, 100, "reach"), (180, 70, 31, "exact"), (320, 40, 0, "none"), (340, 100, 0, "none"), (520, 70, 0, "none")],
    "sound": [(100, 70, 0, "none"), (300, 40, 0, "none"), (300, 100, 0, "none"), (600, 70, 0, "none")],
    "ranout": [(100, 70, 80, "reach"), (200, 50, 80, "reach"), (260, 110, 45, "exact"), (420, 70, 0, "none")],
    "close": [(100, 70, 0, "none"), (130, 70, 12, "exact"), (160, 70, 0, "none"), (130, 100, 0, "none"), (130, 40, 9, "exact")],
}
ASKED = [(50, 70), (130, 55), (250, 70), (400, 70), (700, 30)]


def matern(p, q):
    r = np.sqrt(((p[:, None, 0] - q[None, :, 0]) / ALONG) ** 2 + ((p[:, None, 1] - q[None, :, 1]) / ACROSS) ** 2) * np.sqrt(5)
    return SPREAD**2 * (1 + r + r * r / 3) * np.exp(-r)


rng = np.random.default_rng(SEED)
asked = np.array(ASKED, float)
with open("bounds-answers.csv", "w") as out:
    out.write(f"# source: a long Gibbs run, numpy {np.__version__}, scipy {scipy.__version__}, seed {SEED}\n# where: bounds.py beside this file\n# known: computed\n"
              "# checks: test sillwright.wood.BoundsTest\ncase,along_mm,across_mm,mean_mm,deviation_mm,depth_mm,soft\n")
    for case, rows in CASES.items():
        at = np.array([r[:2] for r in rows], float)
        z = np.array([r[2] for r in rows], float) - MEAN
        says = [r[3] for r in rows]
        c = matern(at, at) + HAND**2 * np.eye(len(rows))
        p = np.linalg.inv(c)
        kx = matern(asked, at)
        left = np.sqrt(np.maximum(0, np.diag(matern(asked, asked)) - np.einsum("ij,jk,ik->i", kx, p, kx)))
        g = np.where(np.array(says) == "none", z - 1, z + (np.array(says) == "reach"))
        total, squares, depth, soft, n = np.zeros(len(asked)), np.zeros(len(asked)), np.zeros(len(asked)), np.zeros(len(asked)), 0
        uniform = rng.random((ROUNDS + BURN, len(rows)))
        for k in range(ROUNDS + BURN):
            for i, s in enumerate(says):
                if s == "exact":
                    continue
                sd = 1 / np.sqrt(p[i, i])
                m = g[i] - p[i] @ g / p[i, i]
                edge = (z[i] - m) / sd
                u = uniform[k, i]
                g[i] = m + sd * (ndtri(u * ndtr(edge)) if s == "none" else -ndtri(u * ndtr(-edge)))
            if k < BURN:
                continue
            f = MEAN + kx @ (p @ g) + left * rng.standard_normal(len(asked))
            total += f
            squares += f * f
            depth += np.clip(f, 0, 140)
            soft += f > 5
            n += 1
        mean = total / n
        for a, m, d, e, s in zip(ASKED, mean, np.sqrt(squares / n - mean**2), depth / n, soft / n):
            out.write(f"{case},{a[0]},{a[1]},{m:.4f},{d:.4f},{e:.4f},{s:.5f}\n")
