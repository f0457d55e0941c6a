"""Pictures without any rock, drawn: walls, pages, lawns, boards, cloth, plain noise.

They teach the network that edges alone are no stones. Drawn at random by number; 8-bit RGB.
"""

import math
import random

import numpy as np
from PIL import Image, ImageDraw, ImageFilter

SIDE = 576


def _noise(draw, octaves, side=SIDE):
    """Smooth noise from -1 to 1, coarse to fine."""
    rng = np.random.default_rng(draw.getrandbits(32))
    total = np.zeros((side, side), np.float32)
    for octave in octaves:
        cells = max(2, side // octave)
        grid = Image.fromarray(rng.normal(size=(cells, cells)).astype(np.float32))
        total += np.asarray(grid.resize((side, side), Image.BICUBIC)) / len(octaves)
    return total


def _colour(draw, low=20, high=235):
    grey = draw.uniform(low, high)
    return tuple(int(min(255, max(0, grey + draw.uniform(-40, 40)))) for _ in range(3))


def _shaded(picture, draw, strength):
    pixels = np.asarray(picture).astype(np.float32)
    fine = _noise(draw, [2, 4, 9, 30])[..., None] * strength
    coarse = _noise(draw, [120, 300])[..., None] * draw.uniform(0, 30)
    return Image.fromarray(np.clip(pixels + fine + coarse, 0, 255).astype(np.uint8))


def wall(draw):
    """Bricks or blocks in courses, seen a little askew."""
    side = int(SIDE * 1.5)
    mortar = _colour(draw, 90, 220)
    brick = _colour(draw, 40, 200)
    picture = Image.new("RGB", (side, side), mortar)
    pen = ImageDraw.Draw(picture)
    height = draw.uniform(14, 70)
    width = height * draw.uniform(1.0, 3.6)
    joint = max(1.0, height * draw.uniform(0.03, 0.18))
    offset = draw.choice([0, 0.5, 0.5, 0.5, 0.33])
    rows = int(side / height) + 2
    for row in range(rows):
        for column in range(-1, int(side / width) + 2):
            tone = draw.gauss(0, 9)
            colour = tuple(int(c + tone) for c in brick)
            x = (column + offset * (row % 3 if offset == 0.33 else row % 2)) * width
            y = row * height
            pen.rounded_rectangle([x, y, x + width - joint, y + height - joint],
                                  radius=draw.uniform(0, height * 0.15), fill=colour)
    corners = [(draw.uniform(0, 100), draw.uniform(0, 100)) for _ in range(4)]
    quad = [corners[0][0], corners[0][1], corners[1][0], side - corners[1][1],
            side - corners[2][0], side - corners[2][1], side - corners[3][0], corners[3][1]]
    picture = picture.transform((SIDE, SIDE), Image.QUAD, quad, Image.BICUBIC)
    return _shaded(picture, draw, draw.uniform(2, 26))


def page(draw):
    """Lines of words: strokes that look like letters."""
    paper = _colour(draw, 190, 250)
    ink = _colour(draw, 0, 80)
    if draw.random() < 0.15:
        paper, ink = ink, paper
    picture = Image.new("RGB", (SIDE, SIDE), paper)
    pen = ImageDraw.Draw(picture)
    size = draw.uniform(7, 44)
    thick = max(1, int(size * draw.uniform(0.08, 0.22)))
    y = draw.uniform(0, size)
    while y < SIDE:
        x = draw.uniform(0, 2 * size)
        while x < SIDE * draw.uniform(0.7, 1.3):
            if draw.random() < 0.16:
                x += size * 0.6
                continue
            for _ in range(draw.choice([1, 2, 2, 3])):
                ends = [x + draw.uniform(0, size * .5), y + draw.uniform(0, size * .8)] * 2
                ends[2:] = [x + draw.uniform(0, size * .5), y + draw.uniform(0, size * .8)]
                if draw.random() < 0.4:
                    box = [min(ends[0], ends[2]), min(ends[1], ends[3]),
                           max(ends[0], ends[2]) + 2, max(ends[1], ends[3]) + 2]
                    pen.arc(box, draw.uniform(0, 180), draw.uniform(181, 360), ink, thick)
                else:
                    pen.line(ends, ink, thick)
            x += size * 0.62
        y += size * draw.uniform(1.2, 1.7)
    return _shaded(picture.rotate(draw.uniform(-20, 20), Image.BICUBIC, fillcolor=paper), draw, 3)


def lawn(draw):
    """Blades of grass, leaves or straw, thousands of them."""
    ground = _colour(draw, 20, 110)
    picture = Image.new("RGB", (SIDE, SIDE), ground)
    pen = ImageDraw.Draw(picture)
    green = draw.random() < 0.75
    length = draw.uniform(8, 70)
    lean = draw.uniform(0, math.pi)
    tousled = draw.uniform(0.2, 3)
    for _ in range(int(260000 / length)):
        x, y = draw.uniform(0, SIDE), draw.uniform(0, SIDE)
        turn = lean + draw.gauss(0, tousled)
        far = length * draw.uniform(0.4, 1)
        tone = draw.uniform(0.35, 1.1)
        base = (90, 140, 45) if green else (170, 150, 100)
        colour = tuple(int(min(255, c * tone + draw.uniform(-12, 12))) for c in base)
        pen.line([x, y, x + far * math.cos(turn), y + far * math.sin(turn)], colour,
                 draw.choice([1, 1, 2, 2, 3]))
    return _shaded(picture, draw, draw.uniform(0, 20))


def boards(draw):
    """Planks, corrugated sheet, tiles: lines at even distances."""
    picture = Image.new("RGB", (SIDE * 2, SIDE * 2), _colour(draw))
    pen = ImageDraw.Draw(picture)
    step = draw.uniform(12, 140)
    dark = _colour(draw, 0, 130)
    crossed = draw.random() < 0.5
    y = 0.0
    while y < SIDE * 2:
        pen.rectangle([0, y, SIDE * 2, y + step], fill=_colour(draw, 80, 160)
                      if draw.random() < 0.3 else None)
        pen.line([0, y, SIDE * 2, y], dark, int(draw.uniform(1, 1 + step * 0.12)))
        if crossed:
            pen.line([y, 0, y, SIDE * 2], dark, int(draw.uniform(1, 1 + step * 0.1)))
        y += step
    turned = picture.rotate(draw.uniform(0, 180), Image.BICUBIC)
    half = SIDE // 2
    return _shaded(turned.crop((half, half, half + SIDE, half + SIDE)), draw, draw.uniform(2, 30))


def ground(draw):
    """Earth, asphalt, concrete, water, cloth: noise of some length in one colour."""
    base = np.array(_colour(draw), np.float32)
    coarsest = draw.choice([3, 6, 12, 40, 120])
    octaves = [size for size in [1, 2, 3, 6, 12, 25, 60, 120, 250] if size >= coarsest / 6]
    octaves = octaves[:draw.randint(1, len(octaves))]
    tone = _noise(draw, octaves)
    tone *= draw.uniform(4, 70) / max(0.1, float(tone.std()))
    pixels = base + tone[..., None]
    picture = Image.fromarray(np.clip(pixels, 0, 255).astype(np.uint8))
    if draw.random() < 0.3:
        picture = picture.filter(ImageFilter.FIND_EDGES)
    return picture


KINDS = [wall, wall, page, lawn, lawn, boards, ground, ground]


def no_rock(number):
    """The picture of that number: SIDE by SIDE, 8-bit RGB."""
    draw = random.Random(f"no rock {number}")
    return np.asarray(KINDS[number % len(KINDS)](draw).convert("RGB"))
