"""Piles and their pictures to train on and to try on, with every core of the machine.

    python3 make_pictures.py PILES_PROGRAM FOLDER --for training --piles 180 [--seconds 300]
    python3 make_pictures.py PILES_PROGRAM FOLDER --for trial --piles 24

The same number gives the same pile. Piles for the trial have seeds of their own, and half of them
curves of rock classes, which are never trained on; form, weather, frame and so on are dealt out
evenly, each in an order of its own. What is not done after so many seconds is left.
"""

import argparse
import concurrent.futures
import os
import pathlib
import random
import subprocess
import time

SPREADS = ["very-uniform", "class-type", "broad", "very-broad"]
MIXES = ["quarried", "quarried", "slabs", "river", "mixed", "splinters"]
WEATHERS = ["any", "any", "any", "sun", "overcast", "dusty", "wet", "snow", "mossy"]
TRIAL_CLASSES = ["fhwa-2", "fhwa-3", "fhwa-5", "front-range-m"]
TRIAL_PILES = 24


def training_pile(number):
    """Words of `piles make` for a pile to train on."""
    draw = random.Random(f"training {number}")
    kind = draw.choices(["layer", "heap", "truck"], [0.66, 0.27, 0.07])[0]
    frame = draw.choice([6, 7.5, 9, 11, 13])
    stones = {6: 420, 7.5: 500, 9: 600, 11: 750, 13: 950}[frame]
    words = [f"--{kind}", "--spread", draw.choice(SPREADS), "--mix", draw.choice(MIXES)]
    words += ["--d50", f"{draw.choice([6, 9, 12, 15, 18, 24])} in", "--stones", str(stones)]
    if kind == "layer":
        words += ["--slope", draw.choice(["0", "2H:1V", "1.5H:1V", "3H:1V"])]
    if draw.random() < 0.4:
        words += ["--no-balls"]
    words += ["--weather", draw.choice(WEATHERS), "--frame", str(frame)]
    return words + ["--seed", str(100000 + number), "--linear", "--samples", "6", "--pictures", "8"]


def dealt(name, cards):
    """Each card as often as the others over TRIAL_PILES piles, in an order of its own."""
    deck = [cards[i % len(cards)] for i in range(TRIAL_PILES)]
    random.Random(f"trial {name}").shuffle(deck)
    return deck


def trial_pile(number):
    """Words of `piles make` for a pile never trained on."""
    frame = dealt("frame", [8, 10, 12, 13])[number]
    kind = dealt("kind", ["layer", "layer", "layer", "heap"])[number]
    words = [f"--{kind}"]
    rock = dealt("rock", TRIAL_CLASSES + SPREADS)[number]
    words += ["--spread", rock, "--d50", "12 in"] if rock in SPREADS else ["--class", rock]
    if kind == "layer":
        words += ["--slope", dealt("slope", ["2H:1V", "1.5H:1V"])[number]]
    words += ["--mix", dealt("mix", ["quarried", "splinters", "mixed", "slabs", "river"])[number]]
    words += ["--weather", dealt("weather", ["any", "sun", "overcast", "dusty", "wet"])[number]]
    words += ["--stones", str({8: 600, 10: 750, 12: 950, 13: 1050}[frame]), "--frame", str(frame)]
    return words + ["--seed", str(900000 + number), "--samples", "10", "--pictures", "8"]


def make(program, words, folder, ends):
    left = ends - time.monotonic()
    if left < 20 or (folder / "done").exists():
        return
    folder.mkdir(parents=True, exist_ok=True)
    try:
        subprocess.run([program, "make", *words, "--width", "768", "--out", str(folder)],
                       stdout=subprocess.DEVNULL, timeout=left, check=True)
        (folder / "done").touch()
    except subprocess.TimeoutExpired:
        pass
    except subprocess.CalledProcessError as error:
        print(folder, "failed:", error, flush=True)


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("program")
    parser.add_argument("folder", type=pathlib.Path)
    parser.add_argument("--for", dest="purpose", choices=["training", "trial"], required=True)
    parser.add_argument("--piles", type=int, required=True)
    parser.add_argument("--seconds", type=float, default=1e6)
    parser.add_argument("--processes", type=int, default=os.cpu_count())
    wanted = parser.parse_args()
    ends = time.monotonic() + wanted.seconds
    words_of = training_pile if wanted.purpose == "training" else trial_pile
    with concurrent.futures.ThreadPoolExecutor(wanted.processes) as pool:
        for number in range(wanted.piles):
            folder = wanted.folder / f"{wanted.purpose}-{number:03}"
            pool.submit(make, wanted.program, words_of(number), folder, ends)
    made = list(wanted.folder.glob(f"{wanted.purpose}-*/picture-*-stones.png"))
    print(len(made), "pictures", flush=True)


if __name__ == "__main__":
    main()
