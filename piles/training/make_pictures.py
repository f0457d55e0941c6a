"""Piles and their pictures to train on and to try on, with every core of the machine.

    python3 make_pictures.py PILES_PROGRAM FOLDER --for training --piles 180 [--seconds 300]
    python3 make_pictures.py PILES_PROGRAM FOLDER --for study --piles 160
    python3 make_pictures.py PILES_PROGRAM FOLDER --for trial --piles 72
    python3 make_pictures.py PILES_PROGRAM FOLDER --for guided --piles 48

The same number gives the same pile. Piles to train on, to fit what outlines say (study) and to try
both (trial) have seeds of their own; half of the trial's have curves of rock classes that stand
nowhere else. Of study and trial, form, weather, frame and so on are dealt out evenly, each in an
order of its own. Guided piles are large layers, taken as the screen asks: 12 to 14 D50 wide, four
pictures square to the face side by side and four oblique ones. An odd one is the pile before it
once more, with other stones: what the rock of one says of that of the other. What is not done
after so many seconds is left.
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
# Four frames of rock with more small stones than these have would take over 5,000 stones.
GUIDED_ROCK = ["fhwa-2", "fhwa-3", "fhwa-5", "very-uniform", "class-type", "broad"]
STUDY_CLASSES = ["fhwa-4", "fhwa-6", "front-range-l", "front-range-h"]
# Piles over which everything is dealt out evenly.
ROUND = 24
# Where sizes spread far most stones are small: so much of the usual frame is filled, by so many more.
FILLED = {"broad": (0.8, 1.4), "very-broad": (0.6, 1.6)}


def frame_words(rock, frame, stones):
    narrower, more = FILLED.get(rock, (1, 1))
    return ["--stones", str(round(more * stones)), "--frame", f"{narrower * frame:g}"]


def training_pile(number):
    """Words of `piles make` for a pile to train on."""
    draw = random.Random(f"training {number}")
    kind = draw.choices(["layer", "heap", "truck"], [0.66, 0.27, 0.07])[0]
    frame = draw.choice([6, 7.5, 9, 11, 13])
    stones = {6: 420, 7.5: 500, 9: 600, 11: 750, 13: 950}[frame]
    spread = draw.choice(SPREADS)
    words = [f"--{kind}", "--spread", spread, "--mix", draw.choice(MIXES)]
    words += ["--d50", f"{draw.choice([6, 9, 12, 15, 18, 24])} in"]
    if kind != "layer":
        frame = 0.6 * frame  # it fills no wider one
    words += frame_words(spread, frame, stones)
    if kind == "layer":
        words += ["--slope", draw.choice(["0", "2H:1V", "1.5H:1V", "3H:1V"])]
    if draw.random() < 0.4:
        words += ["--no-balls"]
    words += ["--weather", draw.choice(WEATHERS)]
    return words + ["--seed", str(100000 + number), "--linear", "--samples", "6", "--pictures", "8"]


def dealt(purpose, name, cards, number):
    """Each card as often as the others over every round of piles, in an order of its own."""
    deck = [cards[i % len(cards)] for i in range(ROUND)]
    rounds = number // ROUND
    random.Random(f"{purpose} {name}{rounds or ''}").shuffle(deck)
    return deck[number % ROUND]


def dealt_pile(purpose, classes, first_seed, number):
    """Words of `piles make` for a pile never trained on."""
    def card(name, cards):
        return dealt(purpose, name, cards, number)

    frame = card("frame", [8, 10, 12, 13])
    kind = card("kind", ["layer", "layer", "layer", "heap"])
    words = [f"--{kind}"]
    rock = card("rock", classes + SPREADS)
    words += ["--spread", rock, "--d50", "12 in"] if rock in SPREADS else ["--class", rock]
    if kind == "layer":
        words += ["--slope", card("slope", ["2H:1V", "1.5H:1V"])]
    words += ["--mix", card("mix", ["quarried", "splinters", "mixed", "slabs", "river"])]
    words += ["--weather", card("weather", ["any", "sun", "overcast", "dusty", "wet"])]
    stones = {8: 600, 10: 750, 12: 950, 13: 1050}[frame]
    if kind == "heap":
        frame = frame / 2 + 1  # it fills no wider one
    words += frame_words(rock, frame, stones)
    return words + ["--seed", str(first_seed + number), "--samples", "10", "--pictures", "8"]


def study_pile(number):
    return dealt_pile("study", STUDY_CLASSES, 700000, number)


def trial_pile(number):
    return dealt_pile("trial", TRIAL_CLASSES, 900000, number)


def guided_pile(number):
    """Words of `piles make` for a layer whose four frames lie side by side."""
    def card(name, cards):
        return dealt("guided", name, cards, number // 2)

    rock = card("rock", GUIDED_ROCK)
    frame = card("frame", [12, 13, 14])
    words = ["--layer", "--apart"]
    words += ["--spread", rock, "--d50", "12 in"] if rock in SPREADS else ["--class", rock]
    words += ["--slope", card("slope", ["2H:1V", "1.5H:1V"])]
    words += ["--mix", card("mix", ["quarried", "splinters", "mixed", "slabs", "river"])]
    words += ["--weather", card("weather", ["any", "sun", "overcast", "dusty", "wet"])]
    narrower = FILLED.get(rock, (1, 1))[0]
    words += ["--frame", f"{narrower * frame:g}", "--width", "1024"]
    return words + ["--seed", str(1100000 + number), "--samples", "8", "--pictures", "8"]


WORDS = {"training": training_pile, "study": study_pile, "trial": trial_pile, "guided": guided_pile}


def make(program, words, folder, ends):
    left = ends - time.monotonic()
    if left < 20 or (folder / "done").exists():
        return
    folder.mkdir(parents=True, exist_ok=True)
    try:
        subprocess.run([program, "make", "--width", "768", *words, "--out", str(folder)],
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
    parser.add_argument("--for", dest="purpose", choices=list(WORDS), required=True)
    parser.add_argument("--piles", type=int, required=True)
    parser.add_argument("--seconds", type=float, default=1e6)
    parser.add_argument("--processes", type=int, default=os.cpu_count())
    wanted = parser.parse_args()
    ends = time.monotonic() + wanted.seconds
    words_of = WORDS[wanted.purpose]
    with concurrent.futures.ThreadPoolExecutor(wanted.processes) as pool:
        for number in range(wanted.piles):
            folder = wanted.folder / f"{wanted.purpose}-{number:03}"
            pool.submit(make, wanted.program, words_of(number), folder, ends)
    made = list(wanted.folder.glob(f"{wanted.purpose}-*/picture-*-stones.png"))
    print(len(made), "pictures", flush=True)


if __name__ == "__main__":
    main()
