"""Recordings of invented people, made apart from packages/simulation: other shapes of moves, other bodies, other faults.

    python3 tests/reference/other_people.py DIR [SETS [FIRST_SEED]]

writes CSV files, a manifest and truth.json (tops in s) into DIR. Needs NumPy and SciPy. Every size is ours. The foot is a
rigid lever that turns about the forefoot, and sensors are read by finite differences of where they are, at 400 Hz.
"""

import json
import sys
from pathlib import Path

import numpy as np
from scipy.signal import butter, sosfiltfilt

RATE_HZ = 400.0
GRAVITY = 9.81

EASED = {
    "minimum jerk": lambda u: u**3 * (10 - 15 * u + 6 * u * u),
    "cosine": lambda u: (1 - np.cos(np.pi * u)) / 2,
    "logistic": lambda u: (1 / (1 + np.exp(9 * (0.5 - u))) - 1 / (1 + np.exp(4.5))) / np.tanh(2.25),
    "pushed off": lambda u: smooth_step(1 - (1 - u) ** 2.2),
    "let fall": lambda u: smooth_step(u**1.5),
}
UP = ["minimum jerk", "cosine", "logistic", "pushed off"]
DOWN = ["minimum jerk", "cosine", "logistic", "let fall"]


def smooth_step(way):
    return way * way * (3 - 2 * way)


def band_noise(random, count, rms, low_hz, high_hz):
    if low_hz == 0:
        sections = butter(2, high_hz, fs=RATE_HZ, output="sos")
    else:
        sections = butter(2, [low_hz, high_hz], "band", fs=RATE_HZ, output="sos")
    noise = sosfiltfilt(sections, random.standard_normal(count))
    return noise * (rms / noise.std())


def second_slope(values):
    return np.gradient(np.gradient(values)) * RATE_HZ**2


class HeelRaises:
    """Heel height of a set over time, and its tops."""

    def __init__(self, random, count, cycle_s=2.0, hold=0.15, rest=0.15, height_m=0.09, fatigue=0.2, quiet_s=(3, 3),
                 incomplete=0.0, pause=0.0, bounce=False, dip=0.0):
        up_shape, down_shape = EASED[random.choice(UP)], EASED[random.choice(DOWN)]
        moves, self.tops_s, now, low = [], [], float(quiet_s[0]), 0.0
        for k in range(count):
            progress = k / max(1, count - 1)
            cycle = cycle_s * (1 + 0.1 * progress) * np.exp(0.06 * random.standard_normal())
            moving = cycle * (1 - hold - rest)
            up_s = moving * random.uniform(0.45, 0.57)
            top = height_m * (1 - fatigue * progress) * np.exp(0.04 * random.standard_normal())
            top = max(top, low + 0.4 * height_m)
            last = k == count - 1
            after = top * random.uniform(0.1, 0.35) if not last and random.random() < incomplete else 0.0
            moves.append((now, up_s, low, top, up_shape))
            now += up_s
            if random.random() < dip:
                self.tops_s.append(now)
                valley, again = top * random.uniform(0.65, 0.9), top * random.uniform(0.85, 0.97)
                sink_s = random.uniform(0.2, 0.35) * max(1, cycle / 2)
                moves.append((now, sink_s, top, valley, EASED["cosine"]))
                moves.append((now + sink_s, sink_s, valley, again, EASED["cosine"]))
                now, top = now + 2 * sink_s, again
            else:
                self.tops_s.append(now + hold * cycle / 2)
            now += hold * cycle
            moves.append((now, moving - up_s, top, after, down_shape))
            now, low = now + moving - up_s, after
            if last:
                break
            if random.random() < pause:
                stay_s = random.uniform(3, 7)
                moves += bounces(random, now, stay_s, low) if bounce else []
                now += stay_s
            else:
                now += rest * cycle
        self.times_s = np.arange(0, now + quiet_s[1], 1 / RATE_HZ)
        self.height_m = np.zeros_like(self.times_s)
        for begin, lasts, start, end, eased in sorted(moves, key=lambda move: move[0]):
            inside = (self.times_s >= begin) & (self.times_s <= begin + lasts)
            share = np.clip((self.times_s[inside] - begin) / lasts, 0, 1)
            self.height_m[inside] = start + (end - start) * eased(share)
            self.height_m[self.times_s > begin + lasts] = end


def bounces(random, begin_s, stay_s, low):
    moves, at = [], begin_s + 0.4
    while at < begin_s + stay_s - 1.2:
        height, half_s = random.uniform(0.003, 0.012), random.uniform(0.15, 0.3)
        moves.append((at, half_s, low, low + height, EASED["cosine"]))
        moves.append((at + half_s, half_s, low + height, low, EASED["cosine"]))
        at += 2 * half_s + random.uniform(0.1, 0.8)
    return moves


class Standing:
    """Nothing but standing."""

    def __init__(self, lasts_s=30.0):
        self.times_s = np.arange(0, lasts_s, 1 / RATE_HZ)
        self.height_m = np.zeros_like(self.times_s)
        self.tops_s = []


def any_mounting(random):
    turn, _ = np.linalg.qr(random.standard_normal((3, 3)))
    return turn * np.sign(np.linalg.det(turn))


def sampled(times_s, channels, rate_hz, random, broken):
    """Samples at a rate; broken ones have jitter, lost packets and two gaps."""
    sections = butter(2, min(0.45 * rate_hz, 80), fs=RATE_HZ, output="sos")
    at = np.arange(times_s[0], times_s[-1], 1 / rate_hz)
    if broken:
        at = np.clip(np.sort(at + random.uniform(-0.3, 0.3, len(at)) / rate_hz), times_s[0], times_s[-1])
        kept = np.ones(len(at), bool)
        for first in np.flatnonzero(random.random(len(at)) < 0.004):
            kept[first : first + random.integers(1, max(2, int(0.12 * rate_hz)))] = False
        for gap_s in random.uniform(2, at[-1] - 2, 2):
            kept[(at > gap_s) & (at < gap_s + random.uniform(0.3, 0.7))] = False
        at = at[kept]
    at, first = np.unique(np.round(at, 5), return_index=True)
    return at, [np.interp(at, times_s, sosfiltfilt(sections, channel)) for channel in channels]


def string(random, raises, rate_hz=100.0, broken=False):
    count = len(raises.times_s)
    height = raises.height_m + band_noise(random, count, 0.0012, 0.05, 0.6) + 0.0003 * random.standard_normal(count)
    return *sampled(raises.times_s, [1000 * height], rate_hz, random, broken), ["heel_height [mm]"], {}


def foot(random, raises, rate_hz=100.0, broken=False, gyroscope=True):
    count, lever_m, share = len(raises.times_s), random.uniform(0.16, 0.205), 0.6
    height = raises.height_m + band_noise(random, count, 0.0012, 0.05, 1.0)
    pitch = np.arcsin(np.clip(height / lever_m, -0.9, 0.98))
    along, up = share * lever_m * np.cos(pitch), share * lever_m * np.sin(pitch)
    forward, upward = second_slope(along), second_slope(up) + GRAVITY
    tilt = pitch + random.uniform(-0.3, 0.3)
    acceleration = np.vstack([
        forward * np.cos(tilt) + upward * np.sin(tilt),
        np.zeros(count),
        upward * np.cos(tilt) - forward * np.sin(tilt),
    ])
    rate = np.vstack([np.zeros(count), -np.gradient(pitch) * RATE_HZ, np.zeros(count)])
    mounting = any_mounting(random)
    acceleration = mounting @ acceleration + 0.02 * random.standard_normal((3, count)) + 0.08 * random.standard_normal((3, 1))
    rate = mounting @ rate + 0.01 * random.standard_normal((3, count)) + 0.01 * random.standard_normal((3, 1))
    channels, heads = list(acceleration), [f"acc_{axis} [m/s2]" for axis in "xyz"]
    if gyroscope:
        channels, heads = channels + list(np.degrees(rate)), heads + [f"gyro_{axis} [deg/s]" for axis in "xyz"]
    return *sampled(raises.times_s, channels, rate_hz, random, broken), heads, {"heel_lever_mm": round(1000 * lever_m)}


def body_acceleration(random, raises, bend_m):
    """Upward acceleration of the body: the ankle is lifted on its lever, sway of 0.05 m/s2 a root hertz below 3 Hz."""
    pitch = np.arcsin(np.clip(raises.height_m / random.uniform(0.16, 0.205), -0.9, 0.98))
    rise = 0.142 * (np.sin(pitch + 0.5) - np.sin(0.5))
    if bend_m > 0:
        since = np.mod(raises.times_s - 2, 3.3)
        bent = (raises.times_s > 2) & (raises.times_s < 2 + 6 * 3.3) & (since < 3)
        rise = rise - np.where(bent, bend_m * np.sin(np.pi * since / 3) ** 2, 0)
    sections = butter(2, 3, fs=RATE_HZ, output="sos")
    sway = sosfiltfilt(sections, random.standard_normal(len(rise))) * 0.05 * np.sqrt(RATE_HZ / 2)
    return second_slope(rise) + sway


def trunk(random, raises, rate_hz=100.0, broken=False, bend_m=0.0):
    count, force = len(raises.times_s), GRAVITY + body_acceleration(random, raises, bend_m)
    lean, side = band_noise(random, count, 0.02, 0.05, 0.5), band_noise(random, count, 0.02, 0.05, 0.5)
    acceleration = np.vstack([force * np.sin(side), force * np.sin(lean), force * np.cos(side) * np.cos(lean)])
    acceleration = any_mounting(random) @ acceleration + 0.02 * random.standard_normal((3, count))
    heads = [f"acc_{axis} [m/s2]" for axis in "xyz"]
    return *sampled(raises.times_s, list(acceleration), rate_hz, random, broken), heads, {}


def platform(random, raises, rate_hz=200.0, broken=False, bend_m=0.0):
    mass_kg, count = random.uniform(50, 100), len(raises.times_s)
    force = mass_kg * (GRAVITY + body_acceleration(random, raises, bend_m)) + 2 * random.standard_normal(count)
    known = {"body_mass_kg": round(mass_kg, 1)}
    return *sampled(raises.times_s, [force], rate_hz, random, broken), ["force [N]"], known


def without_gyroscope(random, raises, **how):
    return foot(random, raises, gyroscope=False, **how)


SENSORS = {
    "heel": ("heel", string),
    "foot": ("foot", foot),
    "foot without gyroscope": ("foot", without_gyroscope),
    "trunk": ("trunk", trunk),
    "platform": ("platform", platform),
}

# what is done, and how it is recorded; trunk and platform see slow raises of 4 s and quick ones of 0.9 s
SITUATIONS = {
    "plain": (lambda random, buried: HeelRaises(random, int(random.integers(8, 35))), {}),
    "slow, held": (lambda random, buried: HeelRaises(random, 8, 4.0 if buried else 6.0, hold=0.35, rest=0.1), {}),
    "quick": (lambda random, buried: HeelRaises(random, 25, 0.9, hold=0.05, rest=0.05, height_m=0.07), {}),
    "pauses with bounces": (lambda random, buried: HeelRaises(random, 18, pause=0.15, bounce=True), {}),
    "dips at the top": (lambda random, buried: HeelRaises(random, 18, dip=0.2), {}),
    "incomplete, samples lost": (lambda random, buried: HeelRaises(random, 22, incomplete=0.5, fatigue=0.4), {"broken": True}),
    "100 raises": (lambda random, buried: HeelRaises(random, 100, 1.8, fatigue=0.5), {}),
    "three raises": (lambda random, buried: HeelRaises(random, 3), {}),
    "one raise": (lambda random, buried: HeelRaises(random, 1), {}),
    "standing": (lambda random, buried: Standing(), {}),
    "knee bends of 250 mm": (lambda random, buried: Standing(), {"bend_m": 0.25}),
}


def write(folder, name, recording):
    times_s, channels, heads, known = recording
    table = np.column_stack([times_s, *channels])
    head = ",".join(["time [s]", *heads])
    np.savetxt(folder / name, table, "%.5f", ",", header=head, comments="")
    return known


def main(folder, sets=12, first_seed=1):
    folder.mkdir(parents=True, exist_ok=True)
    truth, rows = [], ["file,person,visit,side,test,placement,heel_lever_mm,body_mass_kg"]
    for s, (sensor, (placement, record)) in enumerate(SENSORS.items()):
        buried = placement in ("trunk", "platform")
        for k, (situation, (people, how)) in enumerate(SITUATIONS.items()):
            if "bend_m" in how and not buried:
                continue
            for seed in range(first_seed, first_seed + sets):
                random = np.random.default_rng([seed, s, k])
                raises = people(random, buried)
                name = f"{s}-{k}-{seed}.csv"
                known = write(folder, name, record(random, raises, **how))
                tops_s = [round(float(top), 3) for top in raises.tops_s]
                truth.append({"file": name, "sensor": sensor, "situation": situation, "topsS": tops_s})
                lever, mass = known.get("heel_lever_mm", ""), known.get("body_mass_kg", "")
                rows.append(f"{name},,,left,heel-raise,{placement},{lever},{mass}")
    (folder / "truth.json").write_text(json.dumps(truth))
    (folder / "manifest.csv").write_text("\n".join(rows) + "\n")


if __name__ == "__main__":
    main(Path(sys.argv[1]), *map(int, sys.argv[2:4]))
