"""Days at a tank by an integrator that knows nothing of the product: scipy's DOP853 between switches found as events."""
import csv
import random
import sys

from scipy.integrate import solve_ivp

PATM = 101.325


def litres_at(case, pressure):
    if pressure <= case["charge_kPa"]:
        return 0.0
    return case["tank_L"] * (1 - (case["charge_kPa"] + PATM) / (pressure + PATM))


def pressure_at(case, litres):
    return (case["charge_kPa"] + PATM) / (1 - litres / case["tank_L"]) - PATM


def made(case, litres):
    return case["k_L_h_kPa"] * (case["feed_kPa"] - pressure_at(case, max(litres, 0.0)))


def day(case):
    full = litres_at(case, case["ratio"] * case["feed_kPa"])
    reopens = litres_at(case, (case["ratio"] - case["hysteresis"]) * case["feed_kPa"])
    floor = litres_at(case, case["minimum_kPa"])
    t, v, running = 0.0, full, False
    total = dict(drawn_L=0.0, short_L=0.0, made_L=0.0, hours_running=0.0)
    while t < 24 - 1e-9:
        hour = int(t + 1e-9)
        end = min(24.0, hour + 1.0)
        asked = case[f"h{hour}"]
        at_floor = v <= floor + 1e-7 and (made(case, v) if running else 0.0) < asked
        if at_floor:
            # The tank stands at the floor: what is made is given, the rest is missing.
            given = min(asked, made(case, floor)) if running else 0.0
            step = end - t
            if not running and floor <= reopens:
                running = True
                continue
            total["drawn_L"] += given * step
            total["short_L"] += (asked - given) * step
            total["made_L"] += given * step
            total["hours_running"] += step if running else 0.0
            t = end
            continue

        def rate(_, y):
            return [(made(case, y[0]) if running else 0.0) - asked, made(case, y[0]) if running else 0.0]

        def event(level, direction):
            def crossed(_, y):
                return y[0] - level

            crossed.terminal = True
            crossed.direction = direction
            return crossed

        events = [event(floor, -1)]
        events.append(event(full, 1) if running else event(reopens, -1))
        run = solve_ivp(rate, (t, end), [v, 0.0], method="DOP853", events=events, rtol=1e-10, atol=1e-10)
        step = run.t[-1] - t
        total["drawn_L"] += asked * step
        total["made_L"] += run.y[1, -1]
        total["hours_running"] += step if running else 0.0
        t, v = float(run.t[-1]), float(run.y[0, -1])
        if len(run.t_events[0]):
            v = floor
        if len(run.t_events[1]):
            v = full if running else reopens
            running = not running
            if not running:
                v = full - 1e-12
    total["end_L"] = v
    total["drain_L"] = total["hours_running"] * case["drain_L_h"]
    return total


def main():
    chance = random.Random(20260)
    cases = []
    for n in range(24):
        feed = chance.uniform(300, 600)
        minimum = chance.uniform(60, 0.55 * feed)
        case = dict(
            id=f"D{n + 1:02d}",
            tank_L=round(chance.uniform(10, 120), 1),
            charge_kPa=round(minimum - chance.uniform(-20, 60), 1),
            feed_kPa=round(feed, 1),
            k_L_h_kPa=round(chance.uniform(0.02, 0.15), 4),
            drain_L_h=round(chance.uniform(15, 80), 1),
            ratio=round(chance.uniform(0.6, 0.67), 3),
            hysteresis=round(chance.uniform(0.05, 0.12), 3),
            minimum_kPa=round(minimum, 1),
        )
        opens, shuts = chance.randint(4, 10), chance.randint(13, 22)
        busy = chance.uniform(2, 60)
        for hour in range(24):
            asked = busy * chance.uniform(0, 1.6) if opens <= hour < shuts and chance.random() < 0.85 else 0.0
            case[f"h{hour}"] = round(asked, 3)
        cases.append({**case, **{name: round(value, 4) for name, value in day(case).items()}})
    out = csv.DictWriter(sys.stdout, fieldnames=list(cases[0]), lineterminator="\n")
    out.writeheader()
    out.writerows(cases)


main()
