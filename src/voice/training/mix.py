"""Weights between two networks of the page: python3 mix.py ONE.onnx OTHER.onnx SHARE OUT.onnx, where SHARE (0 to 1) is the other's.

Both are as export.py writes them: normalisation folded in, 8 bits a channel. OUT is ONE with the weights exchanged in place.
"""
import sys
from pathlib import Path

import numpy as np


def varint(data, at):
    value = shift = 0
    while True:
        byte = data[at]
        value |= (byte & 127) << shift
        at, shift = at + 1, shift + 7
        if byte < 128:
            return value, at


def fields(data, at, end):
    """(number, where its content begins, where it ends) of each field that has a length, and its value of each number."""
    while at < end:
        key, at = varint(data, at)
        kind = key & 7
        if kind == 2:
            size, at = varint(data, at)
            yield key >> 3, at, at + size
            at += size
        elif kind == 0:
            _, at = varint(data, at)
        elif kind in (1, 5):
            at += 8 if kind == 1 else 4
        else:
            raise ValueError(f'field of kind {kind}: this is no network of ours')


def weights(data):
    """Where each stored tensor of the model lies, by name: ModelProto.graph = 7, GraphProto.initializer = 5, name = 8, raw_data = 9."""
    out = {}
    for number, at, end in fields(data, 0, len(data)):
        for inner, first, last in fields(data, at, end) if number == 7 else ():
            if inner == 5:
                parts = {part: (begin, stop) for part, begin, stop in fields(data, first, last)}
                begin, stop = parts[8]
                out[bytes(data[begin:stop]).decode()] = parts[9]
    return out


def values(data, place, kind):
    return np.frombuffer(bytes(data[place[0] : place[1]]), kind)


def mixed(one, other, share):
    one, other = bytearray(one), bytearray(other)
    mine, theirs = weights(one), weights(other)
    if not mine or set(mine) != set(theirs) or any(mine[name][1] - mine[name][0] != theirs[name][1] - theirs[name][0] for name in mine):
        raise ValueError('two networks of different shapes')
    for name in sorted(name[:-2] for name in mine if name.endswith('.w')):
        whole, bias = [], []
        for data, places in ((one, mine), (other, theirs)):
            scale = values(data, places[f'{name}.s'], '<f4').astype(np.float64)
            whole.append(values(data, places[f'{name}.w'], 'i1').reshape(len(scale), -1) * scale[:, None])
            bias.append(values(data, places[f'{name}.b'], '<f4').astype(np.float64))
        weight = whole[0] * (1 - share) + whole[1] * share
        scale = np.abs(weight).max(axis=1) / 127 + 1e-12
        for suffix, value in (('w', np.round(weight / scale[:, None]).astype('i1')), ('s', scale.astype('<f4')),
                              ('b', (bias[0] * (1 - share) + bias[1] * share).astype('<f4'))):
            begin, end = mine[f'{name}.{suffix}']
            one[begin:end] = value.tobytes()
    return bytes(one)


if __name__ == '__main__':
    first, second, part, written = sys.argv[1:]
    Path(written).write_bytes(mixed(Path(first).read_bytes(), Path(second).read_bytes(), float(part)))
