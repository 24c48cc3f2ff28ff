"""Small reverse-osmosis units with a permeate pump, worked out independently of this project's code.

Writes operating_points.csv and fillings.csv beside this file. Needs numpy and scipy. Run: python3 generate.py
Membrane, filters and booster are those of ../composed-ro-units/generate.py; the pump's equations and all choices are in SOURCE.md.
"""

import importlib.util
import pathlib

import numpy as np
from scipy.optimize import brentq

HERE = pathlib.Path(__file__).parent
spec = importlib.util.spec_from_file_location("composed", HERE.parent / "composed-ro-units" / "generate.py")
composed = importlib.util.module_from_spec(spec)
spec.loader.exec_module(composed)

PUMP = "permeate_pump pump_stroke_ratio pump_loss_kPa pump_slip pump_inlet_kPa".split()
POINT = [*composed.POINT, "permeate_side_kPa_gauge", "drive_kPa", "pump_state"]


class Drain:
    """Restrictor, and behind it the pump's concentrate piston."""

    def __init__(self, unit, lift_kpa):
        self.unit = unit
        # Force on the rod: area of the one piston times drive = area of the other times (lift + loss).
        self.drive = (lift_kpa + unit["pump_loss_kPa"]) / unit["pump_stroke_ratio"]
        self.takes = unit["pump_stroke_ratio"] / (1 - unit["pump_slip"])

    def free(self, kpa):
        return self.unit["restrictor_L_h"] * np.sqrt(max(kpa, 0) / self.unit["restrictor_rated_kPa"])

    def pushing(self, kpa):
        return self.free(kpa - self.drive)

    def mean(self, kpa, permeate):
        """A cycle that lifts one litre: the push takes takes/pushing hours, and the rest of the 1/permeate hours the drain is free."""
        if permeate <= 0:
            return self.free(kpa)
        cycle = 1 / permeate
        push = min(cycle, self.takes / self.pushing(kpa)) if self.pushing(kpa) > 0 else cycle
        return (push * self.pushing(kpa) + (cycle - push) * self.free(kpa)) / cycle


def settled(unit, permeate_kpa, drain):
    """Feed, concentrate flow and salt, and pressure, with the permeate side at a pressure and the drain as given."""
    membrane = composed.Membrane(unit)

    def spare(feed):
        kpa = composed.before_element_kpa(unit, feed)
        flow = composed.concentrate_of(unit, membrane, feed, (kpa - permeate_kpa) / 100)[0]
        return flow - drain(kpa, feed - flow)

    top = composed.before_element_kpa(unit, 0)
    most_water = unit["elements"] * unit["area_m2"] * membrane.a * max(0, top - permeate_kpa) / 100
    most = most_water + unit["restrictor_L_h"] * np.sqrt(top / unit["restrictor_rated_kPa"]) + 1e-6
    feed = brentq(spare, 1e-3 * most, most, rtol=1e-12, xtol=1e-11)
    kpa = composed.before_element_kpa(unit, feed)
    flow, grams = composed.concentrate_of(unit, membrane, feed, (kpa - permeate_kpa) / 100)
    return {"feed": feed, "flow": flow, "grams": grams, "kpa": kpa, "permeate": feed - flow}


def point(unit, lift_kpa):
    drain = Drain(unit, lift_kpa)
    inlet = unit["pump_inlet_kPa"]

    def behind(permeate_kpa):
        at = settled(unit, permeate_kpa, drain.mean)
        return drain.takes * at["permeate"] - drain.pushing(at["kpa"])

    top = composed.before_element_kpa(unit, 0)
    if lift_kpa <= inlet:
        side, at, state, drive = lift_kpa, settled(unit, lift_kpa, lambda kpa, _: drain.free(kpa)), "through", 0.0
    elif behind(inlet) <= 0:
        side, at, state, drive = inlet, settled(unit, inlet, drain.mean), "lifting", drain.drive
    else:
        high = min(lift_kpa, top - 1e-6)
        if behind(high) > 0:
            side, at, state, drive = lift_kpa, settled(unit, lift_kpa, drain.mean), "through", drain.drive
        else:
            side = brentq(behind, inlet, high, rtol=1e-11, xtol=1e-8)
            at, state, drive = settled(unit, side, drain.mean), "overrun", drain.drive
    feed_mg_l = unit["feed_NaCl_mg_L"]
    permeate_mg_l = (at["feed"] * feed_mg_l - 1000 * at["grams"]) / at["permeate"]
    return {
        "feed_L_h": at["feed"],
        "permeate_L_h": at["permeate"],
        "permeate_mg_L": permeate_mg_l,
        "concentrate_L_h": at["flow"],
        "concentrate_mg_L": 1000 * at["grams"] / at["flow"],
        "recovery": at["permeate"] / at["feed"],
        "rejection_percent": 100 * (1 - permeate_mg_l / feed_mg_l),
        "permeate_side_kPa_gauge": side,
        "drive_kPa": drive,
        "pump_state": state,
    }, at["kpa"]


def closing_kpa(unit):
    miss = lambda end: unit["shutoff_ratio"] * point(unit, end)[1] - end  # noqa: E731
    return brentq(miss, 1, unit["shutoff_ratio"] * composed.before_element_kpa(unit, 0), rtol=1e-9, xtol=1e-6)


def fill(unit):
    outside = composed.outside_kpa(unit["altitude_m"])
    charge = unit["air_charge_kPa_gauge"] + outside
    shut_off = closing_kpa(unit)
    one = unit["tank_L"] * (1 - charge / (shut_off + outside))
    blend = unit["blend_fraction"]
    nodes, weights = np.polynomial.legendre.leggauss(5)
    panels, hours, salt, to_drain = 6, 0.0, 0.0, 0.0
    for panel in range(panels):
        for node, weight in zip(nodes, weights):
            in_one = one * (panel + (node + 1) / 2) / panels
            at = point(unit, charge * unit["tank_L"] / (unit["tank_L"] - in_one) - outside)[0]
            litres = unit["tanks"] * one * weight / 2 / panels
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
    unit = composed.drawn(rng, name)
    between = lambda low, high: float(f"{rng.uniform(low, high):.4g}")  # noqa: E731
    return {
        **unit,
        "permeate_pump": "yes",
        "pump_stroke_ratio": between(1.1, 5),
        "pump_loss_kPa": between(0, 60),
        "pump_slip": between(0, 0.2),
        "pump_inlet_kPa": between(2, 40),
    }


def makes_water(unit, lift_kpa):
    """More than a trickle, and a concentrate that sodium chloride of the Pitzer fit still covers."""
    drain = Drain(unit, lift_kpa)
    if composed.before_element_kpa(unit, 0) < max(unit["pump_inlet_kPa"], drain.drive) + 15:
        return False
    try:
        at = point(unit, lift_kpa)[0]
    except ValueError:
        return False
    return at["permeate_L_h"] > 0.1 and at["recovery"] < 0.8 and at["concentrate_mg_L"] < 60000


def main():
    rng = np.random.default_rng(70117)
    points, fillings = [], []
    while len(points) < 48:
        unit = drawn(rng, f"P{len(points) + 1:02d}")
        lift = float(f"{rng.uniform(0.02, 1.3) * unit['feed_pressure_kPa_gauge']:.4g}")
        if makes_water(unit, lift):
            points.append({**unit, "tank_pressure_kPa_gauge": lift, **point(unit, lift)[0]})
    composed.write(HERE / "operating_points.csv", [*composed.INPUTS, *PUMP, "tank_pressure_kPa_gauge", *POINT], points)
    while len(fillings) < 16:
        unit = drawn(rng, f"F{len(fillings) + 1:02d}")
        unit["tank_L"] = float(f"{np.exp(rng.uniform(np.log(8), np.log(150))):.3g}")
        unit["tanks"] = float(rng.choice([1, 2]))
        unit["shutoff_ratio"] = float(f"{rng.uniform(0.6, 1.05):.3g}")
        top = composed.before_element_kpa(unit, 0)
        if not makes_water(unit, unit["shutoff_ratio"] * top):
            continue
        try:
            unit["air_charge_kPa_gauge"] = float(f"{rng.uniform(0.05, 0.5) * closing_kpa(unit):.3g}")
            if makes_water(unit, unit["air_charge_kPa_gauge"]):
                fillings.append({**unit, **fill(unit)})
        except ValueError:  # somewhere on the way the drain all but dries up
            continue
    composed.write(HERE / "fillings.csv", [*composed.INPUTS, *PUMP, *composed.TANK, *composed.FILLING], fillings)


if __name__ == "__main__":
    main()
