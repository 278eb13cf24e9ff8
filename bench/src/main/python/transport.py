"""The transport kernel with NumPy for the coefficients and SciPy's banded solver for the step.

Three ways: `alone`, one piece after the other through all the hours, as one would write it first; `each`, coefficients of all pieces at once and one
call of the solver for each; `together`, all pieces in one call, end to end in one long band. Run with a CASE, an ANSWER, the hours to do and the way; prints
the processor time in seconds.
"""
import sys
import time

import numpy as np
from scipy.linalg import solve_banded

TINY = 1e-9


def above(x):
    return 0.5 * (x + np.abs(x))


def grown(x):
    q = 0.25 * x
    root = 1 + q * (1 + q * (0.5 + q * (1 / 6 + q * (1 / 24 + q * (1 / 120)))))
    square = root * root
    return square * square


class Case:
    def __init__(self, path):
        self.data = np.fromfile(path)
        self.at = 4
        self.slices, self.pieces, self.step, self.hours = int(self.data[0]), int(self.data[1]), self.data[2], int(self.data[3])
        n = self.pieces
        self.u = self.take(self.slices * n).reshape(self.slices, n)
        self.step_over = self.take(self.slices * n).reshape(self.slices, n)
        self.over_distance = self.take((self.slices - 1) * n).reshape(self.slices - 1, n)
        self.bound, self.rise, self.saturation, self.free, self.over_room, self.full = (self.take(n) for _ in range(6))
        names = ("half", "open", "air", "film", "leak", "fills", "supply", "stays", "left")
        self.near = {name: self.take(n) for name in names}
        self.far = {name: self.take(n) for name in names}
        self.air = [self.take(self.hours) for _ in range(5)]

    def take(self, n):
        part = self.data[self.at:self.at + n].copy()
        self.at += n
        return part

    def face(self, f, u, at_rest, quick, vapour, runs, rain):
        raining = 1.0 if rain > 0 else 0.0
        lasts = np.maximum(above(f["left"] - 1), f["stays"] * raining)
        f["left"] = lasts
        wetted = runs * np.minimum(lasts, 1)
        over = above(u - self.saturation)
        b = u - over
        s = over * self.over_room
        drying = (np.abs(b - at_rest) + TINY) / (np.abs(u - at_rest) + TINY)
        through = self.bound * quick
        vapour_pull = f["open"] * drying / ((f["air"] / vapour + f["half"] / through) / grown(self.rise * b) + f["film"] / vapour)
        gap = self.full - u + TINY
        walls = self.saturation - b
        filling = walls / gap
        square = (0.5 * self.rise * walls) ** 2
        walls_d = through * grown(self.rise * 0.5 * (b + self.saturation)) * (1 + square * (1 / 6 + square / 120))
        liquid = (f["leak"] * walls_d * filling + f["fills"] * self.free * 0.25 * (1 + s) * (1 + s * s) * (1 - filling)) / f["half"]
        liquid_pull = np.minimum(liquid, (f["supply"] * rain + (1 - raining)) / gap)
        pull = (1 - wetted) * vapour_pull + wetted * liquid_pull
        return pull, (1 - wetted) * vapour_pull * at_rest + wetted * liquid_pull * self.full

    def hour(self, h, together):
        at_rest, quick, vapour, runs, rain = (a[h] for a in self.air)
        u = self.u
        near_pull, near_pulled = self.face(self.near, u[0], at_rest, quick, vapour, runs, rain)
        far_pull, far_pulled = self.face(self.far, u[-1], at_rest, quick, vapour, runs, rain)
        over = u - self.saturation
        free = above(over)
        s = free * self.over_room
        walls = self.bound * quick * grown(self.rise * (u - free))
        lets = (free - over) * walls + free * self.free * runs * s ** 3
        summed = (walls[:-1] - walls[1:]) / self.rise + self.free * runs * 0.25 / self.over_room * (s[:-1] ** 4 - s[1:] ** 4)
        link = (np.abs(summed) + TINY * lets[1:]) / (np.abs(u[:-1] - u[1:]) + TINY * np.abs(over[1:]) + 1e-300)
        link *= self.over_distance
        right = u.copy()
        right[0] += self.step_over[0] * near_pulled
        right[-1] += self.step_over[-1] * far_pulled
        band = np.zeros((3,) + u.shape)
        band[1] = 1
        band[1, :-1] += self.step_over[:-1] * link
        band[1, 1:] += self.step_over[1:] * link
        band[1, 0] += self.step_over[0] * near_pull
        band[1, -1] += self.step_over[-1] * far_pull
        band[0, 1:] = -self.step_over[:-1] * link
        band[2, :-1] = -self.step_over[1:] * link
        if together:
            long = np.ascontiguousarray(band.transpose(0, 2, 1)).reshape(3, -1)
            self.u = np.ascontiguousarray(solve_banded((1, 1), long, right.T.reshape(-1), overwrite_ab=True, overwrite_b=True, check_finite=False)
                                          .reshape(self.pieces, self.slices).T)
        else:
            for m in range(self.pieces):
                self.u[:, m] = solve_banded((1, 1), band[:, :, m], right[:, m], check_finite=False)


    def only(self, piece):
        one = object.__new__(Case)
        one.__dict__.update(self.__dict__)
        one.pieces = 1
        for name in ("u", "step_over", "over_distance"):
            setattr(one, name, np.ascontiguousarray(getattr(self, name)[:, piece:piece + 1]))
        for name in ("bound", "rise", "saturation", "free", "over_room", "full"):
            setattr(one, name, getattr(self, name)[piece:piece + 1])
        one.near = {name: row[piece:piece + 1] for name, row in self.near.items()}
        one.far = {name: row[piece:piece + 1] for name, row in self.far.items()}
        return one


def main():
    case = Case(sys.argv[1])
    hours, way = int(sys.argv[3]), sys.argv[4]
    parts = [case.only(piece) for piece in range(case.pieces)] if way == "alone" else [case]
    began = time.process_time()
    for part in parts:
        for h in range(hours):
            part.hour(h, way != "each")
    took = time.process_time() - began
    np.concatenate([part.u for part in parts], axis=1).tofile(sys.argv[2])
    print(f"{took:.9f}")


main()
