"""Trains the network that finds outlines on packed pictures.

    python3 train.py PACKED.npz OUT.weights [--width 16] [--seconds 400] [--seed 1] [--device cuda]

What a camera makes of light is drawn anew for every crop: exposure, colour, contrast, shadow, blur,
noise, compression. One crop in ten shows no rock at all; in one of six a part is covered by such.
"""

import argparse
import math
import time

import numpy as np
import torch
import torch.nn.functional as nnf

import network

CROP = 384


class Crops:
    """Draws batches of (picture, edge, rock, depth) on the device."""

    def __init__(self, path, device, seed):
        packed = np.load(path)
        self.device = device
        self.light = torch.from_numpy(packed["light"]).permute(0, 3, 1, 2).contiguous().to(device)
        self.pieces = torch.from_numpy(packed["pieces"]).to(device)
        self.depth = torch.from_numpy(packed["depth"]).to(device)
        self.empty = torch.from_numpy(packed["empty"]).permute(0, 3, 1, 2).contiguous().to(device)
        self.draw = np.random.default_rng(seed)
        torch.manual_seed(seed)
        step = torch.arange(8, dtype=torch.float32)
        basis = torch.cos(math.pi / 8 * (step[None] + 0.5) * step[:, None]) / 2
        basis[0] /= math.sqrt(2)
        self.basis = basis.to(device)
        self.quality = torch.tensor(
            [[16, 11, 10, 16, 24, 40, 51, 61], [12, 12, 14, 19, 26, 58, 60, 55],
             [14, 13, 16, 24, 40, 57, 69, 56], [14, 17, 22, 29, 51, 87, 80, 62],
             [18, 22, 37, 56, 68, 109, 103, 77], [24, 35, 55, 64, 81, 104, 113, 92],
             [49, 64, 78, 87, 103, 121, 120, 101], [72, 92, 95, 98, 112, 100, 103, 99]],
            dtype=torch.float32, device=device) / 255

    def rand(self, *shape):
        return torch.rand(*shape, device=self.device)

    def between(self, low, high, count):
        return (low + (high - low) * self.rand(count)).view(-1, 1, 1, 1)

    def grid(self, count, size):
        """Where the pixels of each crop lie on its picture: turned, mirrored, larger or smaller."""
        height, width = size
        scale = np.exp(self.draw.uniform(math.log(0.5), math.log(1.35), count))
        turn = self.draw.integers(0, 4, count) * (math.pi / 2) + self.draw.normal(0, 0.12, count)
        mirror = np.where(self.draw.random(count) < 0.5, -1.0, 1.0)
        half = CROP / 2 / scale
        room_x = np.maximum(0, width / 2 - half)
        room_y = np.maximum(0, height / 2 - half)
        x = self.draw.uniform(-1, 1, count) * room_x
        y = self.draw.uniform(-1, 1, count) * room_y
        theta = np.zeros((count, 2, 3), np.float32)
        theta[:, 0, 0] = half * np.cos(turn) * mirror / (width / 2)
        theta[:, 0, 1] = -half * np.sin(turn) / (width / 2)
        theta[:, 1, 0] = half * np.sin(turn) * mirror / (height / 2)
        theta[:, 1, 1] = half * np.cos(turn) / (height / 2)
        theta[:, 0, 2] = x / (width / 2)
        theta[:, 1, 2] = y / (height / 2)
        return nnf.affine_grid(torch.from_numpy(theta).to(self.device),
                               (count, 1, CROP, CROP), align_corners=False)

    def smooth(self, count, cells):
        """Smooth noise from about -1 to 1."""
        coarse = torch.randn(count, 1, cells, cells, device=self.device)
        return nnf.interpolate(coarse, size=(CROP, CROP), mode="bicubic", align_corners=False)

    def blurred(self, image, sigma):
        reach = torch.arange(-3, 4, dtype=torch.float32, device=self.device)
        kernel = torch.exp(-reach[None] ** 2 / (2 * sigma.view(-1, 1) ** 2))
        kernel = (kernel / kernel.sum(1, keepdim=True)).repeat_interleave(3, 0)
        count = image.shape[0]
        flat = nnf.pad(image.reshape(1, count * 3, CROP, CROP), (3, 3, 3, 3), mode="reflect")
        flat = nnf.conv2d(flat, kernel.view(-1, 1, 1, 7), groups=count * 3)
        return nnf.conv2d(flat, kernel.view(-1, 1, 7, 1), groups=count * 3).view(image.shape)

    def compressed(self, image):
        """As JPEG would: 8×8 blocks of luma and colour differences rounded by their frequency."""
        count = image.shape[0]
        luma = (image * torch.tensor([0.299, 0.587, 0.114], device=self.device).view(1, 3, 1, 1)).sum(1)
        planes = torch.stack([luma, image[:, 2] - luma, image[:, 0] - luma], 1)
        blocks = planes.view(count, 3, CROP // 8, 8, CROP // 8, 8).permute(0, 1, 2, 4, 3, 5)
        table = self.quality * self.between(0.05, 1.0, count).view(-1, 1, 1, 1, 1, 1)
        table = table * torch.tensor([1.0, 2.5, 2.5], device=self.device).view(1, 3, 1, 1, 1, 1)
        waves = torch.round(self.basis @ blocks @ self.basis.T / table) * table
        blocks = self.basis.T @ waves @ self.basis
        planes = blocks.permute(0, 1, 2, 4, 3, 5).reshape(count, 3, CROP, CROP)
        red, blue = planes[:, 0] + planes[:, 2], planes[:, 0] + planes[:, 1]
        green = (planes[:, 0] - 0.299 * red - 0.114 * blue) / 0.587
        return torch.stack([red, green, blue], 1)

    def photographed(self, light):
        """Display values from 0 to 1 of linear light."""
        count = light.shape[0]
        shade = torch.sigmoid(6 * (self.smooth(count, 4) - self.between(0.2, 2.0, count)))
        light = light * (1 - shade * self.between(0, 0.75, count))
        middle = light.mean((1, 2, 3), keepdim=True).clamp_min(1e-3)
        stops = torch.randn(count, 1, 1, 1, device=self.device) * 0.6
        light = light * (0.2 / middle) ** self.between(0.3, 1.0, count) * torch.exp2(stops)
        light = light * (1 + 0.13 * torch.randn(count, 3, 1, 1, device=self.device)).clamp(0.5, 1.6)
        light = light * torch.exp(0.25 * self.rand(count, 1, 1, 1) * self.smooth(count, 3))
        grey = light.mean(1, keepdim=True)
        saturation = self.between(0, 1.4, count) * (self.rand(count, 1, 1, 1) > 0.15)
        light = (grey + (light - grey) * saturation).clamp(1e-5, 8)
        image = light ** (1 / 2.2) if self.draw.random() < 0.5 else 1.25 * light / (light + 0.25)
        image = (image.clamp(1e-4, 4)) ** self.between(0.8, 1.25, count)
        image = 0.5 + (image - 0.5) * self.between(0.75, 1.35, count)
        return image

    def exposed(self, image):
        """What lens, sensor and file do to display values."""
        count = image.shape[0]
        image = self.blurred(image, self.between(0.2, 1.3, count))
        noise = self.rand(count, 1, 1, 1) ** 2 * 0.05
        image = image + noise * torch.randn_like(image)
        packed = self.compressed(image)
        image = torch.where(self.rand(count, 1, 1, 1) < 0.6, packed, image)
        return torch.round(image.clamp(0, 1) * 255) / 255

    def of_no_rock(self, count):
        which = torch.from_numpy(self.draw.integers(0, len(self.empty), count)).to(self.device)
        image = self.empty[which].float() / 255
        image = nnf.grid_sample(image, self.grid(count, image.shape[2:]), mode="bilinear",
                                padding_mode="reflection", align_corners=False)
        return image.clamp_min(1e-4) ** 2.2

    def batch(self, count):
        which = torch.from_numpy(self.draw.integers(0, len(self.light), count)).to(self.device)
        grid = self.grid(count, self.light.shape[2:])

        def taken(values, mode):
            return nnf.grid_sample(values, grid, mode=mode, padding_mode="reflection",
                                   align_corners=False)

        light = taken(self.light[which].float(), "bilinear")
        pieces = taken(self.pieces[which][:, None].float(), "nearest")
        depth = taken(self.depth[which][:, None].float() / 255, "bilinear")
        covered = torch.zeros(count, 1, CROP, CROP, device=self.device, dtype=torch.bool)
        odd = max(1, round(count * 0.10))
        part = max(1, round(count * 0.16))
        other = self.of_no_rock(odd + part)
        covered[:odd] = True
        covered[odd:odd + part] = self.smooth(part, 3) > 0.5
        level = light.mean((1, 2, 3), keepdim=True)[:odd + part]
        other = other * level / other.mean((1, 2, 3), keepdim=True).clamp_min(1e-3)
        light[:odd + part] = torch.where(covered[:odd + part], other, light[:odd + part])
        pieces = torch.where(covered, torch.zeros_like(pieces), pieces)
        depth = torch.where(pieces > 0, depth, torch.zeros_like(depth))
        edge = nnf.max_pool2d(pieces, 3, 1, 1) != -nnf.max_pool2d(-pieces, 3, 1, 1)
        # Where crops of rock end and covers begin is an edge of what is seen, too.
        image = self.exposed(self.photographed(light))
        return image, edge.float(), (pieces > 0).float(), depth


def loss_of(maps, edge, rock, depth):
    weight = 1 + 2 * edge
    edges = nnf.binary_cross_entropy_with_logits(maps[:, 0:1], edge, weight=weight)
    rocks = nnf.binary_cross_entropy_with_logits(maps[:, 1:2], rock)
    depths = (torch.sigmoid(maps[:, 2:3]) - depth).abs().mean()
    return edges + rocks + 3 * depths, (edges, rocks, depths)


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("packed")
    parser.add_argument("out")
    parser.add_argument("--width", type=int, default=16)
    parser.add_argument("--seconds", type=float, default=400)
    parser.add_argument("--steps", type=int, default=0)
    parser.add_argument("--crops", type=int, default=24)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--device", default="cuda")
    wanted = parser.parse_args()
    torch.backends.cudnn.benchmark = True
    started = time.monotonic()
    crops = Crops(wanted.packed, wanted.device, wanted.seed)
    print("read in", round(time.monotonic() - started, 1), "s", flush=True)
    net = network.OutlineNet(wanted.width).to(wanted.device, memory_format=torch.channels_last)
    mean = network.OutlineNet(wanted.width).to(wanted.device)
    mean.load_state_dict(net.state_dict())
    optimiser = torch.optim.AdamW(net.parameters(), lr=2e-3, weight_decay=0.01)
    half = torch.autocast(wanted.device, dtype=torch.bfloat16)
    begun = time.monotonic()
    steps = wanted.steps
    step = 0
    sums = torch.zeros(4, device=wanted.device)
    while steps == 0 or step < steps:
        if step == 120 and wanted.steps == 0:
            if wanted.device == "cuda":
                torch.cuda.synchronize()
            left = wanted.seconds - (time.monotonic() - started)
            steps = 120 + int(left / ((time.monotonic() - begun) / 100))
            print("steps:", steps, flush=True)
        if step == 20:
            if wanted.device == "cuda":
                torch.cuda.synchronize()
            begun = time.monotonic()
        part = step / steps if steps else 0
        rate = 2e-3 * min(1, (step + 1) / 300) * 0.5 * (1 + math.cos(math.pi * part))
        for group in optimiser.param_groups:
            group["lr"] = max(rate, 1e-6)
        image, edge, rock, depth = crops.batch(wanted.crops)
        with half:
            maps = net(((image - network.MIDDLE) * network.GAIN).contiguous(
                memory_format=torch.channels_last))
        loss, parts = loss_of(maps.float(), edge, rock, depth)
        optimiser.zero_grad(set_to_none=True)
        loss.backward()
        torch.nn.utils.clip_grad_norm_(net.parameters(), 1.0)
        optimiser.step()
        sums += torch.stack([loss, *parts]).detach()
        with torch.no_grad():
            kept = min(0.999, (step + 1) / (step + 10))
            for to, new in zip(mean.state_dict().values(), net.state_dict().values()):
                if to.dtype.is_floating_point:
                    to.lerp_(new, 1 - kept)
        step += 1
        if step % 500 == 0:
            print(step, [round(float(v), 4) for v in sums / 500],
                  round(time.monotonic() - started, 1), "s", flush=True)
            sums.zero_()
            network.write_weights(mean, wanted.out)
    network.write_weights(mean, wanted.out)
    print("done:", step, "steps,", round(time.monotonic() - started, 1), "s", flush=True)


if __name__ == "__main__":
    main()
