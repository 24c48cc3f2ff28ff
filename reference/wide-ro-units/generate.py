"""Small reverse-osmosis units far from the ordinary, integrated independently of this project's code.

Writes operating_points.csv and fillings.csv beside this file. Needs numpy and scipy. Run: python3 generate.py
The columns are those of ../small-ro-unit. Equations and choices are in SOURCE.md.
"""

import csv
import pathlib

import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

HERE = pathlib.Path(__file__).parent
R = 8.314462618
INPUTS = ("id feed_pressure_kPa_gauge temperature_C feed_NaCl_mg_L area_m2 A_L_m2_h_bar B_L_m2_h beta "
          "restrictor_L_h restrictor_rated_kPa").split()


def osmotic_kpa(mg_per_l, temperature_c):
    """Sodium chloride by Pitzer (Pitzer & Mayorga 1973, Table I) at 25 degC, proportional to absolute temperature."""
    grams = mg_per_l / 1000
    # One litre of solution weighs 997.05 + 0.70 c grams; what is not salt is water.
    molality = grams / 58.443 / ((997.05 - 0.30 * grams) / 1000)
    root = np.sqrt(molality)
    phi = (1 - 0.392 * root / (1 + 1.2 * root)
           + molality * (0.0765 + 0.2664 * np.exp(-2 * root)) + 0.00127 * molality**2)
    return 2 * phi * molality * R * (temperature_c + 273.15) * 0.99705


def flux(unit, bulk, back_kpa):
    """L/m2/h and permeate mg/L at one place, by bracketing."""
    water = unit["A_L_m2_h_bar"] * 1.03 ** (unit["temperature_C"] - 25)
    salt = unit["B_L_m2_h"] * 1.06 ** (unit["temperature_C"] - 25)
    beta, drive = unit["beta"], unit["feed_pressure_kPa_gauge"] - back_kpa

    def concentrations(j):
        passing = salt / (j + salt)
        wall = beta * bulk / (1 + passing * (beta - 1))
        return wall, passing * wall

    def excess(j):
        wall, permeate = concentrations(j)
        pi = osmotic_kpa(wall, unit["temperature_C"]) - osmotic_kpa(permeate, unit["temperature_C"])
        return j - water * (drive - pi) / 100

    j = brentq(excess, 0, water * drive / 100, xtol=1e-14, rtol=1e-13)
    return j, concentrations(j)[1]


def drain(unit):
    return unit["restrictor_L_h"] * np.sqrt(unit["feed_pressure_kPa_gauge"] / unit["restrictor_rated_kPa"])


def point(unit, back_kpa):
    concentrate = drain(unit)
    salt_in = unit["feed_NaCl_mg_L"]

    def along(feed):
        def slope(_, state):
            flow, salt = state
            j, permeate = flux(unit, salt / flow, back_kpa)
            return [-j, -j * permeate]

        gone = lambda _, state: state[0] - 0.2 * concentrate  # noqa: E731
        gone.terminal = True
        return solve_ivp(slope, (0, unit["area_m2"]), [feed, feed * salt_in], method="LSODA",
                         rtol=1e-10, atol=1e-12, events=gone).y[:, -1]

    most = concentrate + unit["area_m2"] * flux(unit, salt_in, back_kpa)[0]
    feed = brentq(lambda q: along(q)[0] - concentrate, concentrate, most, rtol=1e-11, xtol=1e-11)
    _, salt = along(feed)
    permeate = feed - concentrate
    return {
        "feed_L_h": feed,
        "permeate_L_h": permeate,
        "permeate_mg_L": (feed * salt_in - salt) / permeate,
        "concentrate_L_h": concentrate,
        "concentrate_mg_L": salt / concentrate,
        "recovery": permeate / feed,
        "rejection_percent": 100 * (1 - (feed * salt_in - salt) / permeate / salt_in),
    }


def fill(unit):
    outside = 101.325
    charge = unit["air_charge_kPa_gauge"] + outside
    shut_off = unit["shutoff_ratio"] * unit["feed_pressure_kPa_gauge"]
    stored = unit["tank_L"] * (1 - charge / (shut_off + outside))
    nodes, weights = np.polynomial.legendre.leggauss(24)
    hours = salt = 0.0
    for node, weight in zip(nodes, weights):
        litres = stored * (node + 1) / 2
        back = charge * unit["tank_L"] / (unit["tank_L"] - litres) - outside
        at = point(unit, back)
        step = stored * weight / 2
        hours += step / at["permeate_L_h"]
        salt += step * at["permeate_mg_L"]
    to_drain = drain(unit) * hours
    return {
        "fill_time_h": hours,
        "stored_L": stored,
        "mean_permeate_mg_L": salt / stored,
        "drain_L": to_drain,
        "efficiency": stored / (stored + to_drain),
        "recovery_at_start": point(unit, unit["air_charge_kPa_gauge"])["recovery"],
        "shutoff_kPa_gauge": shut_off,
    }


def drawn(rng, i, name):
    between = lambda low, high: float(f"{rng.uniform(low, high):.4g}")  # noqa: E731
    skewed = lambda low, high: float(f"{np.exp(rng.uniform(np.log(low), np.log(high))):.3g}")  # noqa: E731
    return {
        "id": f"{name}{i:02d}",
        "feed_pressure_kPa_gauge": between(90, 1000),
        "temperature_C": between(0.5, 44.5),
        "feed_NaCl_mg_L": skewed(15, 6000),
        "area_m2": skewed(0.15, 6),
        "A_L_m2_h_bar": skewed(0.6, 9),
        "B_L_m2_h": skewed(0.02, 5),
        "beta": between(1, 1.5),
        "restrictor_L_h": skewed(3, 150),
        "restrictor_rated_kPa": float(rng.choice([300, 345, 414, 500])),
    }


def makes_water(unit, back_kpa):
    """More than a trickle, and a concentrate that sodium chloride of the Pitzer fit still covers."""
    try:
        at = point(unit, back_kpa)
    except ValueError:
        return False
    return at["permeate_L_h"] > 0.05 and at["recovery"] < 0.95 and at["concentrate_mg_L"] < 60000


def write(name, columns, rows):
    with open(HERE / name, "w", newline="") as file:
        out = csv.DictWriter(file, columns, lineterminator="\n")
        out.writeheader()
        for row in rows:
            out.writerow({k: v if isinstance(v, str) else f"{v:.7g}" for k, v in row.items()})


def main():
    rng = np.random.default_rng(20250)
    points, fillings = [], []
    while len(points) < 60:
        unit = drawn(rng, len(points) + 1, "W")
        unit["tank_pressure_kPa_gauge"] = float(f"{rng.choice([0, rng.uniform(0, 0.97)]) * unit['feed_pressure_kPa_gauge']:.4g}")
        if makes_water(unit, unit["tank_pressure_kPa_gauge"]):
            points.append({**unit, **point(unit, unit["tank_pressure_kPa_gauge"])})
    while len(fillings) < 24:
        unit = drawn(rng, len(fillings) + 1, "V")
        unit["tank_L"] = float(f"{np.exp(rng.uniform(np.log(4), np.log(300))):.3g}")
        unit["shutoff_ratio"] = float(f"{rng.uniform(0.5, 0.85):.3g}")
        shut_off = unit["shutoff_ratio"] * unit["feed_pressure_kPa_gauge"]
        unit["air_charge_kPa_gauge"] = float(f"{rng.uniform(0.02, 0.9) * shut_off:.3g}")
        if makes_water(unit, shut_off) and makes_water(unit, unit["air_charge_kPa_gauge"]):
            fillings.append({**unit, **fill(unit)})
    write("operating_points.csv", [*INPUTS, "tank_pressure_kPa_gauge", *list(points[0])[len(INPUTS) + 1:]], points)
    write("fillings.csv", [*INPUTS, "tank_L", "air_charge_kPa_gauge", "shutoff_ratio",
                           *list(fillings[0])[len(INPUTS) + 3:]], fillings)


if __name__ == "__main__":
    main()
