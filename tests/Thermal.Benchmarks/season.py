"""Integrates a thermal network read from a file through a heating season with scipy's general solver for stiff equations (BDF, sparse Jacobian given).

File, little-endian: 32-bit counts (nodes, links, hours, longest step in s, watched node), capacities of the nodes in J/K, ends of the
links (32-bit; -1 is the outside), their conductances in W/K, share of the heat that each node gets, start in °C, then by the hour, straight lines between:
outside in °C and heat in W (64-bit). Writes the watched node at each full hour into the second file and prints processor seconds, evaluations, the
largest error of the first week against a run with tolerances a thousand times smaller, and the version.
"""
import sys
import time

import numpy
import scipy
from scipy.integrate import solve_ivp
from scipy.sparse import csc_matrix, diags

HOUR_S = 3600.0
WEEK_H = 168
# Chosen so that the error of the first week, printed, stays below 0.01 K; the longest step is given.
ABSOLUTE_K = 1e-2


def read(name):
    with open(name, "rb") as file:
        nodes, links, hours, step, watched = numpy.fromfile(file, "<i4", 5)
        capacity = numpy.fromfile(file, "<f8", nodes)
        ends = numpy.fromfile(file, "<i4", 2 * links).reshape(2, links)
        conductance = numpy.fromfile(file, "<f8", links)
        share = numpy.fromfile(file, "<f8", nodes)
        start = float(numpy.fromfile(file, "<f8", 1)[0])
        outside = numpy.fromfile(file, "<f8", hours + 1).tolist()
        heat = numpy.fromfile(file, "<f8", hours + 1).tolist()
    return capacity, ends, conductance, share, start, outside, heat, float(step), int(watched)


def rates(capacity, ends, conductance, share):
    """dT/dt = matrix T + by_outside To + by_heat P."""
    nodes = len(capacity)
    inside = ends[1] >= 0
    a, b, g = ends[0][inside], ends[1][inside], conductance[inside]
    outside = numpy.bincount(ends[0][~inside], conductance[~inside], nodes)
    own = numpy.bincount(a, g, nodes) + numpy.bincount(b, g, nodes) + outside
    every = numpy.arange(nodes)
    matrix = csc_matrix((numpy.concatenate((g, g, -own)), (numpy.concatenate((a, b, every)), numpy.concatenate((b, a, every)))), shape=(nodes, nodes))
    return (diags(1 / capacity) @ matrix).tocsc(), outside / capacity, share / capacity


def run(network, hours, absolute_k):
    matrix, by_outside, by_heat, start, outside, heat, step, watched = network

    def rate(t, y):
        hour = min(int(t / HOUR_S), len(outside) - 2)
        part = t / HOUR_S - hour
        return matrix @ y + by_outside * (outside[hour] + part * (outside[hour + 1] - outside[hour])) + by_heat * (heat[hour] + part * (heat[hour + 1] - heat[hour]))

    begin = time.process_time()
    found = solve_ivp(rate, (0, hours * HOUR_S), numpy.full(len(by_heat), start), method="BDF", jac=matrix, max_step=step, rtol=1e-8, atol=absolute_k,
                      t_eval=HOUR_S * numpy.arange(hours + 1))
    seconds = time.process_time() - begin
    if not found.success:
        raise SystemExit(found.message)
    return seconds, found.nfev, found.y[watched]


capacity, ends, conductance, share, start, outside, heat, step, watched = read(sys.argv[1])
network = (*rates(capacity, ends, conductance, share), start, outside, heat, step, watched)
hours = len(outside) - 1
seconds, evaluations, hourly = run(network, hours, ABSOLUTE_K)
week = min(WEEK_H, hours)
fine = run(network, week, ABSOLUTE_K / 1000)[2]
hourly.astype("<f8").tofile(sys.argv[2])
print(seconds, evaluations, float(numpy.abs(fine - hourly[: week + 1]).max()), scipy.__version__)
