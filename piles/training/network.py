"""The network that finds outlines: what it is, and how its weights are kept.

A U-Net of five levels, two 3×3 convolutions a level, each with batch normalisation and ReLU; 2×2
maxima on the way down, nearest neighbours doubled on the way up, where the level's own maps are
joined behind them; a 1×1 convolution to three maps: edge between stones, rock, and how deep in its
stone a pixel lies (0 at the rim, 1 at the innermost). Maps are logits.
"""

import struct

import numpy as np
import torch
import torch.nn.functional as nnf
from torch import nn

LEVELS = 5
MAGIC = b"PSOUTL01"
# A pixel from 0 to 1 becomes (pixel - MIDDLE) * GAIN.
MIDDLE, GAIN = 0.45, 4.0


def layer_shapes(width):
    """(in, out, kernel) of each convolution in the order in which they are used and kept."""
    shapes = []
    before = 3
    for level in range(LEVELS):
        wide = width << level
        shapes += [(before, wide, 3), (wide, wide, 3)]
        before = wide
    for level in reversed(range(LEVELS - 1)):
        wide = width << level
        shapes += [(before + wide, wide, 3), (wide, wide, 3)]
        before = wide
    return shapes + [(width, 3, 1)]


class OutlineNet(nn.Module):
    """With batch normalisation to train, or `folded` into weights and bias to use."""

    def __init__(self, width, folded=False):
        super().__init__()
        self.width = width
        self.convs = nn.ModuleList()
        self.norms = nn.ModuleList()
        for inputs, outputs, kernel in layer_shapes(width):
            last = kernel == 1
            self.convs.append(nn.Conv2d(inputs, outputs, kernel, padding=kernel // 2,
                                        bias=folded or last))
            plain = folded or last
            self.norms.append(nn.Identity() if plain else nn.BatchNorm2d(outputs))

    def forward(self, x):
        layers = iter(zip(self.convs, self.norms))

        def pair(maps):
            for _ in range(2):
                conv, norm = next(layers)
                maps = nnf.relu(norm(conv(maps)))
            return maps

        kept = []
        for level in range(LEVELS):
            x = pair(x if level == 0 else nnf.max_pool2d(x, 2))
            kept.append(x)
        kept.pop()
        while kept:
            x = pair(torch.cat([nnf.interpolate(x, scale_factor=2.0, mode="nearest"), kept.pop()], 1))
        return self.convs[-1](x)


def folded_weights(net):
    """[(weights, bias)] of each convolution with its batch normalisation worked in."""
    found = []
    for conv, norm in zip(net.convs, net.norms):
        weights = conv.weight.detach().double().cpu()
        if isinstance(norm, nn.BatchNorm2d):
            scale = (norm.weight / torch.sqrt(norm.running_var + norm.eps)).detach().double().cpu()
            bias = norm.bias.detach().double().cpu() - norm.running_mean.double().cpu() * scale
            weights = weights * scale[:, None, None, None]
        else:
            bias = conv.bias.detach().double().cpu()
        found.append((weights.float().numpy(), bias.float().numpy()))
    return found


def checksum(data):
    """32-bit FNV-1a."""
    value = 0x811C9DC5
    for byte in data:
        value = ((value ^ byte) * 0x01000193) & 0xFFFFFFFF
    return value


def write_weights(net, path):
    """MAGIC, width of the network (u32), then of each convolution its weights [out][in][row]
    [column] as float16 and its bias as float32, then the checksum of all before; little-endian."""
    data = bytearray(MAGIC + struct.pack("<I", net.width))
    for weights, bias in folded_weights(net):
        data += weights.astype("<f2").tobytes() + bias.astype("<f4").tobytes()
    data += struct.pack("<I", checksum(data))
    with open(path, "wb") as file:
        file.write(data)


def read_weights(path):
    """The folded network that a file of weights holds."""
    with open(path, "rb") as file:
        data = file.read()
    assert data[:8] == MAGIC and struct.unpack("<I", data[-4:])[0] == checksum(data[:-4])
    net = OutlineNet(struct.unpack_from("<I", data, 8)[0], folded=True)
    at = 12
    for conv, (inputs, outputs, kernel) in zip(net.convs, layer_shapes(net.width)):
        count = outputs * inputs * kernel * kernel
        weights = np.frombuffer(data, "<f2", count, at).astype(np.float32)
        conv.weight.data = torch.from_numpy(weights.reshape(outputs, inputs, kernel, kernel))
        at += 2 * count
        conv.bias.data = torch.from_numpy(np.frombuffer(data, "<f4", outputs, at).copy())
        at += 4 * outputs
    assert at == len(data) - 4
    return net.eval()
