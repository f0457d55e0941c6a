"""How much larger or smaller stones are seen for what their outlines show of their form.

    python3 fit_form.py STUDY [TRIAL]

Reads pictures.csv and pieces.csv that `piles trial` wrote of the piles in a folder, fits ln(size as
photographed over that of the pile) at D15, D50 and D85 to view and form by least squares, and says
how far what is left scatters: over the piles themselves, over those of a form that was left out of
the fit, and over the piles of TRIAL, which no fit has seen.
"""

import csv
import math
import sys

import numpy as np

PERCENTS = (15, 50, 85)
FORM = ("box_fill", "elongation", "solidity")


def size_at(sizes, weights, percent):
    """As SurfaceShare: each stone counts as smaller than its own size by half; straight in ln D."""
    order = np.argsort(sizes)
    sizes, weights = np.log(sizes[order]), weights[order]
    smaller = 100 * (np.cumsum(weights) - weights / 2) / weights.sum()
    return math.exp(np.interp(percent, smaller, sizes))


def read(folder):
    """[(picture as a dict, its stones as columns size, weight, box_fill, elongation, solidity)]."""
    with open(f"{folder}/pictures.csv") as file:
        pictures = list(csv.DictReader(file))
    stones = {}
    with open(f"{folder}/pieces.csv") as file:
        rows = csv.reader(file)
        next(rows)
        for pile, picture, *values in rows:
            stones.setdefault((pile, picture), []).append([float(value) for value in values])
    return [(one, np.array(stones[one["pile"], one["picture"]])) for one in pictures
            if len(stones.get((one["pile"], one["picture"]), [])) >= 50]


def sets_of(pictures, number, wanted):
    """Pictures of one pile taken together, `number` at a time, of those that are wanted."""
    piles = {}
    for one, stones in pictures:
        if wanted(one):
            piles.setdefault(one["pile"], []).append((one, stones))
    for group in piles.values():
        for first in range(0, len(group) - number + 1, number):
            yield group[first:first + number]


def straight(one):
    return float(one["off_square"]) <= 0.52


def row_of(group):
    """What a set of pictures shows: ln(seen over true) at each percent, and what explains it."""
    stones = np.concatenate([stones for _, stones in group])
    sizes, weights = stones[:, 0], stones[:, 1]
    seen = [size_at(sizes, weights, percent) for percent in PERCENTS]
    ones = [one for one, _ in group]
    form = np.average(stones[:, 2:5], axis=0, weights=weights)
    return {
        "pile": ones[0]["pile"], "rock": ones[0]["form"], "heap": ones[0]["lies"] == "heap",
        "straight": np.mean([straight(one) for one in ones]),
        "log_ratio": [math.log(s / float(ones[0][f"d{p}"])) for s, p in zip(seen, PERCENTS)],
        "form": dict(zip(FORM, form)),
        "spread": (math.log(seen[1] / seen[0]), math.log(seen[2] / seen[1])),
        "stones": len(sizes),
    }


# What explains ln(seen over true) beside the view: a name and how a row gives it.
TERMS = {
    "box fill": lambda row: row["form"]["box_fill"] - 0.70,
    "elongation": lambda row: row["form"]["elongation"] - 0.35,
    "solidity": lambda row: row["form"]["solidity"] - 0.93,
}


def views(row):
    """1 for each of layer and heap, straight on and oblique; a set of both has some of each."""
    straight_on = row["straight"]
    return [straight_on * (not row["heap"]), (1 - straight_on) * (not row["heap"]),
            straight_on * row["heap"], (1 - straight_on) * row["heap"]]


def matrix(rows, terms):
    return np.array([views(row) + [TERMS[term](row) for term in terms] for row in rows], float)


def fitted(rows, terms, i, ridge=1e-3):
    x = matrix(rows, terms)
    y = np.array([row["log_ratio"][i] for row in rows])
    return np.linalg.solve(x.T @ x + ridge * np.eye(x.shape[1]), x.T @ y)


def left_over(rows, terms, i, coefficients):
    return np.array([row["log_ratio"][i] for row in rows]) - matrix(rows, terms) @ coefficients


def scatter(left):
    return f"{100 * left.mean():+.0f} / {100 * left.std():.0f} %; " \
           f"{100 * np.quantile(np.abs(left), 0.9):.0f} %"


SETS = [("one, straight on", 1, straight), ("one, oblique", 1, lambda one: not straight(one)),
        ("four, straight on", 4, straight), ("four, oblique", 4, lambda one: not straight(one)),
        ("eight", 8, lambda one: True)]


def tell(rows, terms, coefficients, i, name):
    print(f"  {name:22}", scatter(left_over(rows, terms, i, coefficients)), len(rows))


def main():
    study = read(sys.argv[1])
    trial = read(sys.argv[2]) if len(sys.argv) > 2 else []
    single = [row_of([one]) for one in study]
    tried = [[row_of(group) for group in sets_of(trial, number, wanted)]
             for _, number, wanted in SETS]
    for i, percent in enumerate(PERCENTS):
        for terms in ([], ["box fill"], ["elongation"], ["solidity"], list(TERMS)):
            coefficients = fitted(single, terms, i)
            print(f"D{percent}", terms, np.round(coefficients, 3))
            tell(single, terms, coefficients, i, "study")
            for rock in sorted({row["rock"] for row in single}):
                others = [row for row in single if row["rock"] != rock]
                of_rock = [row for row in single if row["rock"] == rock]
                tell(of_rock, terms, fitted(others, terms, i), i, f"without {rock}"[:22])
            for (name, _, _), rows in zip(SETS, tried):
                if rows:
                    tell(rows, terms, coefficients, i, "trial, " + name)


if __name__ == "__main__":
    main()
