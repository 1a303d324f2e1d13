# SPDX-License-Identifier: Apache-2.0
"""numpy (Monte Carlo) and uncertainties (budget) as a contestant of benchmarks/compare.

The requests are told in Contestant.java, the inputs stand in HumidityBudget.java; both hold the same model. Saturation:
Sonntag 1990, Z. Meteorol. 70, 340. Enhancement over water from 0 to 100 degrees: Greenspan 1976, J. Res. NBS 80A, 41.
"""
import sys
import time

import numpy
import uncertainties
from uncertainties import ufloat, umath

TRIALS = 1_000_000
PROBABILITY = 0.9545  # near enough to two sigma: it moves the ends by 3e-6 of themselves
CHAMBER = 101_325.0
ZERO_CELSIUS = 273.15


def saturation(celsius, f):
    t = celsius + ZERO_CELSIUS
    return f.exp(-6096.9385 / t + 21.2409642 - 2.711193e-2 * t + 1.673952e-5 * t * t + 2.433502 * f.log(t))


def enhancement(t, e, p, f):
    alpha = 3.53624e-4 + t * (2.9328363e-5 + t * (2.6168979e-7 + t * 8.5813609e-9))
    beta = f.exp(-1.07588e1 + t * (6.3268134e-2 + t * (-2.5368934e-4 + t * 6.3405286e-7)))
    return f.exp(alpha * (1 - e / p) + beta * (p / e - 1))


def error(dew_point, over, air, relative, reading, f):
    mirror = CHAMBER + over
    at_mirror = saturation(dew_point, f)
    in_chamber = saturation(air, f)
    humidity = (100 * at_mirror * enhancement(dew_point, at_mirror, mirror, f) / mirror
                * CHAMBER / (in_chamber * enhancement(air, in_chamber, CHAMBER, f)))
    return reading - humidity * (1 + relative)


class MonteCarlo:
    values = TRIALS

    def __init__(self):
        self.random = numpy.random.default_rng(20)

    def limits(self, half_width):
        return self.random.uniform(-half_width, half_width, TRIALS)

    def bell(self, mean, u):
        return self.random.normal(mean, u, TRIALS)

    def student(self, scale, freedom):
        return scale * self.random.standard_t(freedom, TRIALS)

    def once(self):
        dew_point = self.bell(12.0323, 0.05)
        for half_width in (0.05, 0.005, 0.03):
            dew_point += self.limits(half_width)
        dew_point += self.student(0.01, 9)
        over = self.limits(50.0)
        air = self.bell(23.0, 0.02)
        for half_width in (0.02, 0.1, 0.02):
            air += self.limits(half_width)
        relative = self.bell(0.0, 1e-4)
        relative += self.bell(0.0, 1e-4)
        reading = self.limits(0.05)
        reading += 50
        reading += self.student(0.06, 9)
        return self.figures(error(dew_point, over, air, relative, reading, numpy))

    @staticmethod
    def figures(values):
        values.sort()
        covered = round(PROBABILITY * TRIALS)
        first = (TRIALS - covered + 1) // 2 - 1
        shortest = numpy.argmin(values[covered:] - values[:-covered])
        return [values.std(ddof=1), values[first], values[first + covered],
                values[shortest], values[shortest + covered]]


class Budget:
    values = 1

    @staticmethod
    def once():
        root3 = 3 ** 0.5
        dew_point = (ufloat(12.0323, 0.05) + ufloat(0, 0.05 / root3) + ufloat(0, 0.005 / root3)
                     + ufloat(0, 0.03 / root3) + ufloat(0, 0.01))
        over = ufloat(0, 50 / root3)
        air = ufloat(23, 0.02) + ufloat(0, 0.02 / root3) + ufloat(0, 0.1 / root3) + ufloat(0, 0.02 / root3)
        relative = ufloat(0, 1e-4) + ufloat(0, 1e-4)
        reading = ufloat(0, 0.05 / root3) + ufloat(50, 0.06)
        found = error(dew_point, over, air, relative, reading, umath)
        return [found.nominal_value, found.std_dev]


WORKS = {"montecarlo": MonteCarlo(), "budget": Budget()}


def clocked(work, milliseconds):
    begun, spent, times = time.perf_counter_ns(), time.process_time_ns(), 0
    while True:
        work.once()
        times += 1
        elapsed = time.perf_counter_ns() - begun
        if elapsed >= milliseconds * 1e6:
            count = times * work.values
            return f"{elapsed / count} {(time.process_time_ns() - spent) / count}"


def answer(verb, what="", amount="0"):
    if verb == "version":
        python = ".".join(map(str, sys.version_info[:3]))
        return f"{numpy.__version__}, uncertainties {uncertainties.__version__}, Python {python}"
    if verb == "load":
        return "ok"  # the model has its own inputs
    if verb == "give":
        return " ".join(repr(float(x)) for x in WORKS[what].once())
    if verb == "time":
        return clocked(WORKS[what], int(amount))
    return "not understood"


for line in sys.stdin:
    print(answer(*line.split()), flush=True)
