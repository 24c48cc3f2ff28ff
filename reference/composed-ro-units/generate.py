"""Composed small reverse-osmosis units, integrated independently of this project's code: filters, a booster, one or two elements,
a blend valve, altitude, one or two tanks.

Writes operating_points.csv and fillings.csv beside this file. Needs numpy and scipy. Run: python3 generate.py
Equations and choices are in SOURCE.md.
"""

import csv
import pathlib

import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

HERE = pathlib.Path(__file__).parent
GAS = 8.314462618
INPUTS = ("id feed_pressure_kPa_gauge temperature_C feed_NaCl_mg_L area_m2 A_L_m2_h_bar B_L_m2_h beta restrictor_L_h "
          "restrictor_rated_kPa filter_drop_kPa filter_drop_at_L_h booster_kPa booster_open_L_h booster_off_below_kPa_gauge "
          "elements arrangement blend_fraction altitude_m").split()
POINT = "feed_L_h permeate_L_h permeate_mg_L concentrate_L_h concentrate_mg_L recovery rejection_percent".split()
TANK = "tank_L air_charge_kPa_gauge tanks shutoff_ratio".split()
FILLING = "fill_time_h stored_L mean_permeate_mg_L drain_L efficiency recovery_at_start shutoff_kPa_gauge".split()


def osmotic_bar(grams_per_l, kelvin):
    """pi = phi 2 m R T rho; phi of sodium chloride by Pitzer at 25 degC (Pitzer & Mayorga 1973, Table I)."""
    solution_g = 997.05 + 0.70 * grams_per_l
    m = grams_per_l / 58.443 / (solution_g - grams_per_l) * 1000
    i = np.sqrt(m)
    phi = 1 - 0.392 * i / (1 + 1.2 * i) + m * (0.0765 + 0.2664 * np.exp(-2 * i)) + 0.00127 * m * m
    return 2 * phi * m * GAS * kelvin * 997.05 / 1e5


class Membrane:
    """Flux of water (L/m2/h) and passage of salt (g/m2/h) at one place."""

    def __init__(self, unit):
        warm = unit["temperature_C"] - 25
        self.kelvin = unit["temperature_C"] + 273.15
        self.a = unit["A_L_m2_h_bar"] * 1.03**warm
        self.b = unit["B_L_m2_h"] * 1.06**warm
        self.beta = unit["beta"]

    def at(self, bulk, drive_bar):
        def permeate_of(j):
            # Cp = s Cm with s = B/(J + B), and Cm = Cp + beta (Cb - Cp): both linear, solved for Cp.
            s = self.b / (j + self.b)
            return s * self.beta * bulk / (1 - s + s * self.beta)

        def miss(j):
            cp = permeate_of(j)
            cm = cp + self.beta * (bulk - cp)
            return self.a * (drive_bar - osmotic_bar(cm, self.kelvin) + osmotic_bar(cp, self.kelvin)) - j

        if miss(0) <= 0:
            return 0.0, self.b * self.beta * bulk
        j = brentq(miss, 0, self.a * drive_bar, xtol=1e-14, rtol=1e-13)
        return j, j * permeate_of(j)


def rise_kpa(unit, flow):
    if unit["booster_kPa"] == 0 or unit["feed_pressure_kPa_gauge"] < unit["booster_off_below_kPa_gauge"]:
        return 0.0
    return max(0.0, unit["booster_kPa"] * (1 - (flow / unit["booster_open_L_h"]) ** 2))


def before_element_kpa(unit, flow):
    lost = unit["filter_drop_kPa"] * (flow / unit["filter_drop_at_L_h"]) ** 1.3
    return unit["feed_pressure_kPa_gauge"] - lost + rise_kpa(unit, flow)


def vessel(membrane, area, flow, grams_per_h, drive_bar):
    """What leaves a vessel of this area as concentrate: flow and salt, with nothing lost on the way; stops where it has all but run dry."""
    if drive_bar <= 0:
        return flow, grams_per_h

    def slope(_, logs):
        flow_here, salt_here = np.exp(np.maximum(logs, -60))
        # Beyond 200 g/L no water passes at these pressures; a trial step may still ask.
        j, salt = membrane.at(min(salt_here / flow_here, 200), drive_bar)
        return [-j / flow_here, -salt / salt_here]

    dry = lambda _, logs: logs[0] - np.log(0.01 * flow)  # noqa: E731
    dry.terminal = True
    start = np.log([flow, grams_per_h])
    end = solve_ivp(slope, (0, area), start, method="DOP853", rtol=1e-10, atol=1e-11, events=dry)
    return tuple(np.exp(end.y[:, -1]))


def concentrate_of(unit, membrane, feed, drive_bar):
    grams, area = feed * unit["feed_NaCl_mg_L"] / 1000, unit["area_m2"]
    if unit["elements"] == 1:
        return vessel(membrane, area, feed, grams, drive_bar)
    if unit["arrangement"] == "series":
        return vessel(membrane, area, *vessel(membrane, area, feed, grams, drive_bar), drive_bar)
    half = vessel(membrane, area, feed / 2, grams / 2, drive_bar)
    return 2 * half[0], 2 * half[1]


def point(unit, back_kpa):
    """The feed flow at which the elements leave exactly what the restrictor lets pass, and the pressure before them."""
    membrane = Membrane(unit)

    def restrictor(kpa):
        return unit["restrictor_L_h"] * np.sqrt(max(kpa, 0) / unit["restrictor_rated_kPa"])

    def spare(feed):
        kpa = before_element_kpa(unit, feed)
        return concentrate_of(unit, membrane, feed, (kpa - back_kpa) / 100)[0] - restrictor(kpa)

    most_kpa = before_element_kpa(unit, 0)
    most_water = unit["elements"] * unit["area_m2"] * membrane.a * (most_kpa - back_kpa) / 100
    # With no permeate the feed is what the restrictor passes; with permeate it is more.
    least = brentq(lambda q: q - restrictor(before_element_kpa(unit, q)), 0, restrictor(most_kpa) + 1)
    feed = brentq(spare, 0.999 * least, most_water + restrictor(most_kpa) + 1e-6, rtol=1e-12, xtol=1e-11)
    kpa = before_element_kpa(unit, feed)
    flow, grams = concentrate_of(unit, membrane, feed, (kpa - back_kpa) / 100)
    permeate = feed - flow
    permeate_mg_l = (feed * unit["feed_NaCl_mg_L"] - 1000 * grams) / permeate
    return {
        "feed_L_h": feed,
        "permeate_L_h": permeate,
        "permeate_mg_L": permeate_mg_l,
        "concentrate_L_h": flow,
        "concentrate_mg_L": 1000 * grams / flow,
        "recovery": permeate / feed,
        "rejection_percent": 100 * (1 - permeate_mg_l / unit["feed_NaCl_mg_L"]),
    }, kpa


def outside_kpa(altitude_m):
    """International standard atmosphere (ISO 2533), troposphere."""
    return 101.325 * (1 - 2.25577e-5 * altitude_m) ** 5.25588


def closing_kpa(unit):
    """The valve behind filters and booster closes at its share of the pressure before it, as that is when it closes."""
    miss = lambda end: unit["shutoff_ratio"] * point(unit, end)[1] - end  # noqa: E731
    top = before_element_kpa(unit, 0)
    return brentq(miss, 0, unit["shutoff_ratio"] * top, rtol=1e-11, xtol=1e-8)


def fill(unit):
    outside = outside_kpa(unit["altitude_m"])
    charge = unit["air_charge_kPa_gauge"] + outside
    shut_off = closing_kpa(unit)
    one = unit["tank_L"] * (1 - charge / (shut_off + outside))
    blend = unit["blend_fraction"]
    nodes, weights = np.polynomial.legendre.leggauss(24)
    hours = salt = to_drain = 0.0
    for node, weight in zip(nodes, weights):
        in_one = one * (node + 1) / 2
        at = point(unit, charge * unit["tank_L"] / (unit["tank_L"] - in_one) - outside)[0]
        litres = unit["tanks"] * one * weight / 2
        product = at["permeate_L_h"] / (1 - blend)
        hours += litres / product
        to_drain += litres / product * at["concentrate_L_h"]
        salt += litres * ((1 - blend) * at["permeate_mg_L"] + blend * unit["feed_NaCl_mg_L"])
    stored = unit["tanks"] * one
    return {
        "fill_time_h": hours,
        "stored_L": stored,
        "mean_permeate_mg_L": salt / stored,
        "drain_L": to_drain,
        "efficiency": stored / (stored + to_drain),
        "recovery_at_start": point(unit, unit["air_charge_kPa_gauge"])[0]["recovery"],
        "shutoff_kPa_gauge": shut_off,
    }


def drawn(rng, name):
    between = lambda low, high: float(f"{rng.uniform(low, high):.4g}")  # noqa: E731
    skewed = lambda low, high: float(f"{np.exp(rng.uniform(np.log(low), np.log(high))):.3g}")  # noqa: E731
    boosted, filtered = rng.random() < 0.5, rng.random() < 0.7
    return {
        "id": name,
        "feed_pressure_kPa_gauge": between(120, 700),
        "temperature_C": between(2, 40),
        "feed_NaCl_mg_L": skewed(40, 3000),
        "area_m2": skewed(0.3, 4),
        "A_L_m2_h_bar": skewed(1, 8),
        "B_L_m2_h": skewed(0.05, 2),
        "beta": between(1, 1.4),
        "restrictor_L_h": skewed(10, 150),
        "restrictor_rated_kPa": float(rng.choice([345, 414, 500])),
        "filter_drop_kPa": between(3, 60) if filtered else 0.0,
        "filter_drop_at_L_h": between(60, 150),
        "booster_kPa": between(80, 400) if boosted else 0.0,
        "booster_open_L_h": skewed(150, 900),
        "booster_off_below_kPa_gauge": float(rng.choice([0, 70, 200])),
        "elements": float(rng.choice([1, 2])),
        "arrangement": str(rng.choice(["series", "parallel"])),
        "blend_fraction": between(0.01, 0.3) if rng.random() < 0.4 else 0.0,
        "altitude_m": float(rng.choice([0, 0, 300, 800, 1600])),
    }


def makes_water(unit, back_kpa):
    """More than a trickle, and a concentrate that sodium chloride of the Pitzer fit still covers."""
    if before_element_kpa(unit, 0) < back_kpa + 5:
        return False
    at = point(unit, back_kpa)[0]
    return at["permeate_L_h"] > 0.1 and at["recovery"] < 0.9 and at["concentrate_mg_L"] < 60000


def write(name, columns, rows):
    with open(HERE / name, "w", newline="") as file:
        out = csv.DictWriter(file, columns, lineterminator="\n")
        out.writeheader()
        for row in rows:
            out.writerow({k: v if isinstance(v, str) else f"{v:.7g}" for k, v in row.items()})


def main():
    rng = np.random.default_rng(61126)
    points, fillings = [], []
    while len(points) < 60:
        unit = drawn(rng, f"C{len(points) + 1:02d}")
        back = float(f"{rng.choice([0, rng.uniform(0, 0.9)]) * unit['feed_pressure_kPa_gauge']:.4g}")
        if makes_water(unit, back):
            points.append({**unit, "tank_pressure_kPa_gauge": back, **point(unit, back)[0]})
    while len(fillings) < 40:
        unit = drawn(rng, f"F{len(fillings) + 1:02d}")
        unit["tank_L"] = float(f"{np.exp(rng.uniform(np.log(8), np.log(150))):.3g}")
        unit["tanks"] = float(rng.choice([1, 2]))
        unit["shutoff_ratio"] = float(f"{rng.uniform(0.55, 0.75):.3g}")
        if not makes_water(unit, unit["shutoff_ratio"] * before_element_kpa(unit, 0)):
            continue
        unit["air_charge_kPa_gauge"] = float(f"{rng.uniform(0.05, 0.7) * closing_kpa(unit):.3g}")
        if makes_water(unit, unit["air_charge_kPa_gauge"]):
            fillings.append({**unit, **fill(unit)})
    write("operating_points.csv", [*INPUTS, "tank_pressure_kPa_gauge", *POINT], points)
    write("fillings.csv", [*INPUTS, *TANK, *FILLING], fillings)


if __name__ == "__main__":
    main()
