"""Writes general-solver-months.csv with a general linear program solver; not needed to run the tests.

Each month is cut into ten steps. In a step of h seconds the vapour pressures p of the faces and the water M they hold obey
    M_new = M_old + h (inflow(p) - outflow(p) + source) >= 0,   p <= saturation,   one of the two with equality at every face,
whose solution is the largest p that keeps all M_new >= 0: a linear program, maximise sum p.
"""
import csv, math
import scipy
from scipy.optimize import linprog

DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]
DELTA0, STEPS, YEARS = 1.9e-10, 10, 4

def psat(t):
    return 610.5 * math.exp(17.269 * t / (237.3 + t) if t >= 0 else 21.875 * t / (265.5 + t))

def step(sd, ps, pi, pe, src, held, h):
    n = len(sd) - 1                      # inner faces 1..n
    g = [DELTA0 / s for s in sd]
    scale = 1e9 * 86400 / h              # rows of order one
    A, b = [], []
    for j in range(n):                   # -(M_old + h net(p)) <= 0
        row = [0.0] * n
        row[j] = (g[j] + g[j + 1]) * h * scale
        const = held[j] + h * src[j]
        if j > 0: row[j - 1] = -g[j] * h * scale
        else: const += h * g[0] * pi
        if j < n - 1: row[j + 1] = -g[j + 1] * h * scale
        else: const += h * g[n] * pe
        A.append(row); b.append(const * scale)
    r = linprog([-1.0] * n, A_ub=A, b_ub=b, bounds=[(None, s) for s in ps], method="highs-ds",
                options={"primal_feasibility_tolerance": 1e-10, "dual_feasibility_tolerance": 1e-10})
    assert r.status == 0, r.message
    p = [pi, *r.x, pe]
    return [max(0.0, held[j] + h * (g[j] * (p[j] - p[j + 1]) - g[j + 1] * (p[j + 1] - p[j + 2]) + src[j])) for j in range(n)]

CASES = {  # name: resistances, s_d, outside mean and swing, inside pressure, source at the skin (face 4) below 5 degC, first month
    "several planes": ([0.13, 0.5, 0.7, 0.7, 0.02, 0.04], [0.05, 0.4, 0.8, 0.8, 0.7, 0.01], 4, 15, 1500, 0.0, 9),
    "tight skin with air behind": ([0.13, 0.05, 0.7, 0.7, 0.0001, 0.04], [0.01, 0.9, 0.03, 0.03, 1500, 0.01], 9, 10, 950, 1.5e-8, 10),
    "stays wet": ([0.13, 0.05, 0.5, 0.9, 0.0001, 0.04], [0.01, 0.9, 0.5, 1.2, 2000, 0.01], 1, 11, 1350, 0.0, 8),
}
with open("general-solver-months.csv", "w", newline="\n") as f:
    f.write("# source:    a general linear program solver: linprog (HiGHS) of scipy %s, Debian package python3-scipy 1.10.1-2, by general-solver-run.py\n" % scipy.__version__)
    f.write("# columns:   case [text], month [-], outside_C [°C], inside_Pa [Pa], outside_Pa [Pa], source_kg_m2s [kg/(m²s)], held_1 [kg/m²], held_2 [kg/m²], held_3 [kg/m²], held_4 [kg/m²], held_5 [kg/m²]\n")
    f.write("# tolerance: 2e-6 kg/m²: feasibility tolerance of the solver, summed over the steps of a year\n")
    f.write("# copied by: recorded run; inside 20 °C, δ0 1.9e-10, steps of a tenth of a month from dry in the first wetting month, four years (stays wet: the first)\n")
    w = csv.writer(f, lineterminator="\n")
    w.writerow("case,month,outside_C,inside_Pa,outside_Pa,source_kg_m2s,held_1,held_2,held_3,held_4,held_5".split(","))
    for name, (R, sd, mean, swing, pi, air, first) in CASES.items():
        months = []
        for m in range(12):
            te = round(mean - swing * math.cos(2 * math.pi * (m - 0.5) / 12), 2)
            pe = round(0.8 * psat(te), 2)
            inside = pi if te < 12 else max(pe + 100, 900)
            months.append((te, round(inside, 2), pe, air if te < 5 else 0.0))
        held, out = [0.0] * 5, {}
        growth = []
        for year in range(1 if name == "stays wet" else YEARS):
            for k in range(12):
                m = (first + k) % 12
                te, inside, pe, s = months[m]
                faces, t = [], 0
                for r in R[:-1]:
                    t += r; faces.append(psat(20 - (20 - te) * t / sum(R)))
                for _ in range(STEPS):
                    held = step(sd, faces, inside, pe, [0, 0, 0, s, 0], held, DAYS[m] * 86400 / STEPS)
                out[m] = held
            growth.append(sum(held))
        print(name, growth)
        for m in range(12):
            w.writerow([name, m, *months[m], *("%.8f" % h for h in out[m])])
