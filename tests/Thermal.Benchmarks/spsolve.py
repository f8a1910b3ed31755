"""Times scipy's direct solver on a matrix read from a file: processor seconds and the sum of the solution, a line for each ordering asked for.

File: three little-endian 32-bit counts (unknowns, entries below the diagonal, repeats), then starts of columns and rows (32-bit), values, diagonal, right-hand side (64-bit).
"""
import sys
import time

import numpy
import scipy
from scipy.sparse import csc_matrix, diags
from scipy.sparse.linalg import spsolve

with open(sys.argv[1], "rb") as file:
    unknowns, entries, repeats = numpy.fromfile(file, "<i4", 3)
    starts = numpy.fromfile(file, "<i4", unknowns + 1)
    rows = numpy.fromfile(file, "<i4", entries)
    values = numpy.fromfile(file, "<f8", entries)
    diagonal = numpy.fromfile(file, "<f8", unknowns)
    rhs = numpy.fromfile(file, "<f8", unknowns)
lower = csc_matrix((values, rows, starts), shape=(unknowns, unknowns))
matrix = (lower + lower.T + diags(diagonal)).tocsc()
for ordering in sys.argv[2:]:
    seconds = []
    for _ in range(repeats):
        start = time.process_time()
        solution = spsolve(matrix, rhs, permc_spec=ordering, use_umfpack=False)
        seconds.append(time.process_time() - start)
    print(ordering, sorted(seconds)[repeats // 2], repr(float(solution.sum())), scipy.__version__)
