"""A compiled loop over the same tables as a study, with the same outputs: python sweep.py FOLDER (see lib/bench/README.md).

Reads tables that PeerTest of lib/study wrote and prints counts, best list and front as that test expects them, and the processor
seconds of the fastest run (the first one compiles). The method is that of the study: tables brought to a row's nitrous flow, curves that
cannot be the lowest left out tile by tile, cubics for the rest.
"""
import json
import sys
import time

import numpy as np
from numba import njit

TILE = 1024
FAR = 1e3
MOST = 24
GRAIN = 0.0025


@njit(cache=False, fastmath=False)
def cubics(y, out):
    n = y.size
    for j in range(n - 1):
        s = min(max(0, j - 1), n - 4)
        d1 = y[s + 1] - y[s]
        d2 = (y[s + 2] - 2 * y[s + 1] + y[s]) / 2
        d3 = (y[s + 3] - 3 * y[s + 2] + 3 * y[s + 1] - y[s]) / 6
        u = j - s
        c1 = d1 - d2 + 2 * d3
        c2 = d2 - 3 * d3
        out[4 * j] = y[s] + u * (c1 + u * (c2 + u * d3))
        out[4 * j + 1] = c1 + u * (2 * c2 + u * 3 * d3)
        out[4 * j + 2] = c2 + u * 3 * d3
        out[4 * j + 3] = d3


@njit
def bounds(c, first, last):
    low, high = np.inf, -np.inf
    for j in range(int(first), int(last) + 1):
        t = max(first - j, 0.0)
        d = min(last - j, 1.0) - t
        i = 4 * j
        b0 = c[i] + t * (c[i + 1] + t * (c[i + 2] + t * c[i + 3]))
        e1 = d * (c[i + 1] + t * (2 * c[i + 2] + t * 3 * c[i + 3]))
        e2 = d * d * (c[i + 2] + 3 * t * c[i + 3])
        b1 = b0 + e1 / 3
        b2 = b1 + (e1 + e2) / 3
        b3 = b0 + e1 + e2 + d * d * d * c[i + 3]
        low = min(low, b0, b1, b2, b3)
        high = max(high, b0, b1, b2, b3)
    return low, high


@njit
def score(margin, power, needed):
    steps = np.floor(margin * 1000)
    if not margin >= 0:
        return -1e12 + steps
    return 1e12 + steps if power >= needed else power


@njit
def sweep(values, margins, site, case, mouth, flow, enthalpy, fixed, whose, node, weight, warmth, place, own, own_limit,
          number, needed, whole, whole_nitrous, counts, hist, hist_kept, refused, best, front):
    rows, spots, K, F = flow.shape[0], site.size, place.shape[1], values.shape[4]
    table = np.empty((spots, values.shape[3], F))
    curve = np.empty((spots * margins, 4 * (F - 1)))
    cm, cn = np.empty(spots * margins, np.int64), np.empty(spots * margins, np.int64)
    lows, highs = np.empty(spots * margins), np.empty(spots * margins)
    pc, pm = np.empty((spots, 4 * (F - 1))), np.empty(spots, np.int64)
    pl, ph = np.empty(spots), np.empty(spots)
    tiles = (K + TILE - 1) // TILE
    first, last = np.empty((place.shape[0], tiles)), np.empty((place.shape[0], tiles))
    for m in range(place.shape[0]):
        for t in range(tiles):
            part = place[m, t * TILE:min(K, t * TILE + TILE)]
            first[m, t], last[m, t] = part.min(), part.max()
    margin, power = np.empty(TILE), np.empty(TILE)
    limit = np.empty(TILE, np.int64)
    boxes = 1600
    grains = 1 / GRAIN
    per_watt = 1 / (GRAIN * whole)
    sky = np.empty((boxes, 4))  # margin box, sum, number, power
    members = 0
    for r in range(rows):
        for s in range(spots):
            table[s] = 0
            for h in range(2):
                for i in range(4):
                    w = weight[r, case[s], i] * (warmth[r, case[s]] if h else 1 - warmth[r, case[s]])
                    table[s] += w * values[site[s], h, node[r, case[s]] + i]
        ceiling = fixed[r]
        for s in range(spots):
            for c in range(margins):
                y = table[s, c]
                ceiling = min(ceiling, y.max() + 0.3125 * (y.max() - y.min()))
        n = 0
        p = 0
        for s in range(spots):
            for c in range(margins):
                y = table[s, c]
                if y.min() - 0.3125 * (y.max() - y.min()) <= ceiling:
                    cubics(y, curve[n])
                    cm[n], cn[n] = mouth[s], c
                    n += 1
            if case[s] == 0:
                cubics(table[s, margins], pc[p])
                pm[p] = mouth[s]
                p += 1
        sky[:, 0] = -np.inf
        for t in range(tiles):
            a = t * TILE
            count = min(TILE, K - a)
            for k in range(count):
                mine = own[a + k] < fixed[r]
                margin[k] = own[a + k] if mine else fixed[r]
                limit[k] = own_limit[a + k] if mine else whose[r]
                power[k] = 0
            ceiling = fixed[r]
            for i in range(n):
                lows[i], highs[i] = bounds(curve[i], first[cm[i], t], last[cm[i], t])
                ceiling = min(ceiling, highs[i])
            for i in range(n):
                if lows[i] <= ceiling:
                    c, at, which = curve[i], place[cm[i]], cn[i]
                    for k in range(count):
                        x = at[a + k]
                        j = int(x)
                        u = x - j
                        j *= 4
                        v = c[j] + u * (c[j + 1] + u * (c[j + 2] + u * c[j + 3]))
                        if v < margin[k]:
                            margin[k] = v
                            limit[k] = which
            floor = -np.inf
            for i in range(p):
                pl[i], ph[i] = bounds(pc[i], first[pm[i], t], last[pm[i], t])
                floor = max(floor, pl[i])
            for i in range(p):
                if ph[i] >= floor:
                    c, at = pc[i], place[pm[i]]
                    for k in range(count):
                        x = at[a + k]
                        j = int(x)
                        u = x - j
                        j *= 4
                        v = c[j] + u * (c[j + 1] + u * (c[j + 2] + u * c[j + 3]))
                        if v > power[k]:
                            power[k] = v
            for k in range(count):
                box = min(1599, int(power[k] * per_watt))
                step = box // 4
                hist[step] += 1
                if margin[k] >= 0:
                    counts[0] += 1
                    hist_kept[step] += 1
                    if power[k] >= needed:
                        counts[1] += 1
                    mb = np.floor(margin[k] * grains)
                    if mb >= sky[box, 0]:
                        total = power[k] / whole + margin[k] - flow[r, 0] / whole_nitrous
                        index = r * K + number[a + k]
                        if mb > sky[box, 0] or total > sky[box, 1] or (total == sky[box, 1] and index < sky[box, 2]):
                            sky[box, 0], sky[box, 1], sky[box, 2] = mb, total, index
                else:
                    refused[limit[k]] += 1
                    if counts[0] > 0:
                        continue
                sc = score(margin[k], power[k], needed)
                if sc >= best[MOST - 1, 0]:
                    index = r * K + number[a + k]
                    at = MOST - 1
                    if (sc > best[at, 0] or flow[r, 0] < best[at, 1]
                            or (flow[r, 0] == best[at, 1] and index < best[at, 2])):
                        while at > 0 and (sc > best[at - 1, 0] or (sc == best[at - 1, 0] and (
                                flow[r, 0] < best[at - 1, 1]
                                or (flow[r, 0] == best[at - 1, 1] and index < best[at - 1, 2])))):
                            best[at] = best[at - 1]
                            at -= 1
                        best[at, 0], best[at, 1], best[at, 2] = sc, flow[r, 0], index
        nb = np.floor(-flow[r, 0] * (1 / (GRAIN * whole_nitrous)))
        for b in range(boxes):
            if sky[b, 0] > -np.inf:
                # the same box by another row: the better sum, then the first
                same = -1
                for m in range(members):
                    if front[m, 0] == b and front[m, 1] == sky[b, 0] and front[m, 2] == nb:
                        same = m
                if same < 0:
                    front[members, 3] = -np.inf
                    same = members
                    members += 1
                if sky[b, 1] > front[same, 3]:
                    front[same, 0], front[same, 1], front[same, 2] = b, sky[b, 0], nb
                    front[same, 3], front[same, 4] = sky[b, 1], sky[b, 2]
    keep = 0
    for m in range(members):
        covered = False
        for o in range(members):
            if (o != m and front[o, 0] >= front[m, 0] and front[o, 1] >= front[m, 1] and front[o, 2] >= front[m, 2]
                    and (front[o, 0] > front[m, 0] or front[o, 1] > front[m, 1] or front[o, 2] > front[m, 2])):
                covered = True
                break
        front[m, 5] = 0 if covered else 1
        keep += 0 if covered else 1
    counts[2] = members


def main(folder):
    h = json.load(open(folder + "/sizes.json"))

    def read(name, *shape):
        return np.fromfile(folder + "/" + name + ".bin", dtype=">f8").astype(float).reshape(shape)

    sites, halves, nodes, channels, fuel = h["sites"], 2, h["nitrousNodes"], h["channels"], h["fuelNodes"]
    rows, cases, spots, mouths, circuits = h["rows"], h["cases"], h["spots"], h["mouths"], h["circuits"]
    whole = lambda name, *shape: read(name, *shape).astype(np.int64)
    given = (read("values", sites, halves, nodes, channels, fuel), h["margins"], whole("site", spots), whole("case", spots),
             whole("mouth", spots), read("flow", rows, cases), read("enthalpy", rows, cases), read("fixed", rows),
             whole("whose", rows), whole("node", rows, cases), read("weight", rows, cases, 4), read("warmth", rows, cases),
             read("place", mouths, circuits), read("own", circuits), whole("ownLimit", circuits), whole("number", circuits),
             h["needed"], h["wholePower"], h["wholeNitrous"])
    seconds = np.inf
    for _ in range(50):
        counts, hist, kept = np.zeros(3, np.int64), np.zeros(400, np.int64), np.zeros(400, np.int64)
        refused, best = np.zeros(h["limits"], np.int64), np.full((MOST, 3), -np.inf)
        front = np.zeros((200000, 6))
        begun = time.process_time()
        sweep(*given, counts, hist, kept, refused, best, front)
        seconds = min(seconds, time.process_time() - begun)
    members = front[:counts[2]]
    print(json.dumps({
        "seconds": seconds, "kept": int(counts[0]), "reached": int(counts[1]), "refused": refused.tolist(),
        "all": hist.tolist(), "powerKept": kept.tolist(), "best": [int(b[2]) for b in best if b[0] > -np.inf],
        "front": sorted(int(m[4]) for m in members if m[5] > 0)}))


main(sys.argv[1])
