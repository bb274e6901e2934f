"""The sweep's arithmetic in NumPy, float64, from the factor tables that our side wrote: the fair peer.

    java -cp target/bench.jar org.shotledger.bench.study.SweepCase TABLES   writes the tables and says what our side counts
    python3 peer/sweep.py TABLES [PROCESSES]                                counts the same combinations

Blocked by nitrous setting (boosts x outputs x fuel settings of one speed stay in the cache), Horner in place, no temporary
arrays in the loops; settings are shared among processes. Every combination is held against every limit at every speed.
"""
import sys
import time
from multiprocessing import Pool

import numpy as np


def load(path):
    data = np.fromfile(path, dtype=">f8").astype(np.float64)
    n, b, r, k, p, q, pieces, nodes, f, torque, peak = (int(v) for v in data[:11])
    high, low, speed_margin, lost, reserve, kit_low, kit_high = data[11:18]
    at = 18
    fuel = data[at:at + f]
    at += f
    kit = data[at:at + nodes * f].reshape(nodes, f)
    at += nodes * f
    per_piece = 2 + (k + 2) * q
    per_row = 3 + k * p
    size = 1 + r * 2 * pieces * per_piece + b * (1 + r * per_row)
    blocks = data[at:at + n * size].reshape(n, size)
    return dict(n=n, b=b, r=r, k=k, p=p, q=q, f=f, pieces=pieces, nodes=nodes, torque=torque, peak=peak, high=high,
                low=low, speed_margin=speed_margin, lost=lost, reserve=reserve, kit_low=kit_low, kit_high=kit_high,
                fuel=fuel, kit=kit, blocks=blocks, per_piece=per_piece, per_row=per_row)


def kit_margin(t, plenum):
    """Margins of pump, solenoid, passage and cell at one plenum pressure for each combination, boosts x fuel settings."""
    steps = np.clip((plenum - t["kit_low"]) / (t["kit_high"] - t["kit_low"]) * (t["nodes"] - 1), 0, t["nodes"] - 1)
    node = np.minimum(steps.astype(np.intp), t["nodes"] - 2)
    steps -= node
    column = np.arange(t["f"])
    return (1 - steps) * t["kit"][node, column] + steps * t["kit"][node + 1, column]


def horner(powers, x, out):
    """powers [..., l], x broadcast against [...]: into out, in place."""
    out[...] = powers[..., -1]
    for l in range(powers.shape[-1] - 2, -1, -1):
        out *= x
        out += powers[..., l]
    return out


def work(args):
    t, mine = args
    b, r, k, f = t["b"], t["r"], t["k"], t["f"]
    fuel = t["fuel"]
    lam = 1
    held = np.empty((b, k, f))
    lack = np.empty((b, f))
    x = np.empty((b, f))
    z = np.empty((b, f))
    most = np.empty((b, f))
    least = np.empty((b, k - 2, f))
    leanest = np.empty((b, f))
    richest = np.empty((b, f))
    lacking = np.empty((b, f))
    lowest = np.empty((b, f))
    highest = np.empty((b, f))
    plenum = np.empty((b, f))
    tapered = np.empty((2, k + 2, f))
    whole = 2 * t["pieces"] * t["per_piece"]
    accepted = 0
    reached_sum = 0.0
    evaluated = 0
    for i in mine:
        block = t["blocks"][i]
        branches = block[1:1 + r * whole].reshape(r, 2, t["pieces"], t["per_piece"])
        rows = block[1 + r * whole:].reshape(b, 1 + r * t["per_row"])
        figures = rows[:, 0] > 0
        rows = rows[:, 1:].reshape(b, r, t["per_row"])
        most.fill(-np.inf)
        leanest.fill(-np.inf)
        richest.fill(np.inf)
        lacking.fill(-np.inf)
        least.fill(np.inf)
        lowest.fill(np.inf)
        highest.fill(-np.inf)
        for s in range(r):
            row = rows[:, s]
            np.multiply(row[:, 2:3], fuel, out=x)
            np.multiply(x, 1 - t["lost"], out=z)
            x += row[:, 1:2]
            z += row[:, 1:2]
            np.clip(x, -1, 1, out=x)
            np.clip(z, -1, 1, out=z)
            powers = row[:, 3:].reshape(b, k, 1, t["p"])
            horner(powers, x[:, None, :], held)
            horner(powers[:, lam], z, lack)
            over = []
            for side, load in ((0, t["torque"]), (1, t["peak"])):
                covered = None
                for branch in branches[s, side]:
                    if branch[1] < branch[0]:
                        continue
                    on = (fuel >= branch[0]) & (fuel <= branch[1])
                    y = (2 * fuel[on] - branch[0] - branch[1]) / (branch[1] - branch[0])
                    tapered[side][:, on] = horner(branch[2:].reshape(k + 2, 1, t["q"]), y, np.empty((k + 2, y.size)))
                    covered = on if covered is None else covered | on
                over.append(None if covered is None else (held[:, load] < t["reserve"]) & covered)
            if over[0] is not None and over[1] is not None:
                rules = tapered[0, k + 1] <= tapered[1, k + 1]
                both = over[0] & over[1]
                use = (over[0] & (~both | rules), over[1] & (~both | ~rules))
            else:
                use = over
            np.copyto(plenum, row[:, 0:1])
            for side in (0, 1):
                if use[side] is not None and use[side].any():
                    np.copyto(held, tapered[side, :k], where=use[side][:, None, :])
                    np.copyto(lack, tapered[side, k], where=use[side])
                    np.copyto(plenum, tapered[side, k + 1], where=use[side])
            np.maximum(most, held[:, 0], out=most)
            np.maximum(leanest, held[:, lam], out=leanest)
            np.minimum(richest, held[:, lam], out=richest)
            np.maximum(lacking, lack, out=lacking)
            np.minimum(least, held[:, 2:], out=least)
            np.minimum(lowest, plenum, out=lowest)
            np.maximum(highest, plenum, out=highest)
        closest = least.min(axis=1)
        np.minimum(closest, 1 - leanest / t["high"], out=closest)
        np.minimum(closest, richest / t["low"] - 1, out=closest)
        np.minimum(closest, kit_margin(t, lowest), out=closest)
        np.minimum(closest, kit_margin(t, highest), out=closest)
        np.minimum(closest, min(t["speed_margin"], block[0]), out=closest)
        good = (closest >= 0) & figures[:, None]
        accepted += int(good.sum())
        reached_sum += float(most[good].sum())
        evaluated += b * f
    return evaluated, accepted, reached_sum


def main():
    table = load(sys.argv[1])
    processes = int(sys.argv[2]) if len(sys.argv) > 2 else 2
    parts = [range(start, table["n"], processes) for start in range(processes)]
    begin = time.perf_counter()
    used = time.process_time()
    if processes == 1:
        found = [work((table, parts[0]))]
    else:
        with Pool(processes) as pool:
            found = pool.map(work, [(table, part) for part in parts])
    seconds = time.perf_counter() - begin
    evaluated, accepted, power = (sum(one[i] for one in found) for i in range(3))
    print(f"{evaluated} combinations, {accepted} keep every limit, mean power {power / max(accepted, 1):.3f} W")
    print(f"{seconds:.2f} s by the clock in {processes} processes: {evaluated / seconds / 1e6:.2f} million a second")
    if processes == 1:
        cpu = time.process_time() - used
        print(f"{cpu:.2f} s of processor: {evaluated / cpu / 1e6:.2f} million a processor second")


if __name__ == "__main__":
    main()
