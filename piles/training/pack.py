"""Puts pictures into arrays to train on: light, pieces, depth.

    python3 pack.py FOLDER_OF_PILES OUT.npz [--no-rock 400]

`light`  N×576×768×3 float16, linear light; `pieces` N×576×768 int16, the number of the visible piece
of a stone, 0 where there is none (two pieces of one stone that something parts are two); `depth`
uint8, 255 × distance to the rim of the piece over its largest; `empty` 8-bit pictures of no rock.
"""

import argparse
import concurrent.futures
import os
import pathlib

import numpy as np
from scipy import ndimage
from skimage import measure

import no_rock


def depth_of(pieces):
    rim = np.zeros(pieces.shape, bool)
    across = pieces[:, 1:] != pieces[:, :-1]
    down = pieces[1:] != pieces[:-1]
    rim[:, 1:] |= across
    rim[:, :-1] |= across
    rim[1:] |= down
    rim[:-1] |= down
    away = ndimage.distance_transform_edt(~rim) + 0.5
    away[pieces == 0] = 0
    most = ndimage.maximum(away, pieces, np.arange(pieces.max() + 1))
    most[0] = 1
    return np.round(255 * away / most[pieces]).astype(np.uint8)


def read(path):
    import cv2
    stones = cv2.imread(str(path), cv2.IMREAD_UNCHANGED)
    linear = str(path).replace("-stones.png", "-linear.png")
    light = cv2.imread(linear, cv2.IMREAD_UNCHANGED)
    if stones is None or light is None:
        return None
    pieces = measure.label(stones, background=0, connectivity=1).astype(np.int16)
    light = (light[..., ::-1].astype(np.float32) / 65535).astype(np.float16)
    return light, pieces, depth_of(pieces)


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("folder", type=pathlib.Path)
    parser.add_argument("out")
    parser.add_argument("--no-rock", type=int, default=400)
    wanted = parser.parse_args()
    paths = [path for path in sorted(wanted.folder.glob("training-*/picture-*-stones.png"))
             if path.with_name(path.name.replace("-stones.png", ".json")).exists()]
    with concurrent.futures.ProcessPoolExecutor(os.cpu_count()) as pool:
        found = [one for one in pool.map(read, paths, chunksize=4) if one]
        empty = list(pool.map(no_rock.no_rock, range(wanted.no_rock), chunksize=4))
    arrays = [np.stack(values) for values in zip(*found)]
    np.savez(wanted.out, light=arrays[0], pieces=arrays[1], depth=arrays[2], empty=np.stack(empty))
    print(len(found), "pictures packed", flush=True)


if __name__ == "__main__":
    main()
