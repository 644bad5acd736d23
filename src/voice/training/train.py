"""Trains the phoneme network on the spoken sentences: python3 train.py DATADIR OUTDIR --until SECONDS [--from network.pt or phones.onnx],
or on several GPUs: torchrun --nproc-per-node GPUS train.py ... with the same. A machine that is lent for minutes at a time
takes the whole in parts: --part 0:0.6 first, then --from network.pt --part 0.6:1.

DATADIR holds train and check of synth.py, and where there are any recorded.npz and digits.npz of recorded.py.
Prints a table as it goes; leaves network.onnx (8-bit weights), network.pt and fixture.json in OUTDIR at every line of it.
"""
import argparse
import json
import math
import os
import time
from pathlib import Path

import numpy as np
import torch
from torch import distributed, nn
from torch.nn import functional as F

from export import save_onnx
from features import RATE, WINDOW, features, mel_filters
from network import PHONES, Network

SEED = 20260925
BATCH = 160
# What real people said is little, so it comes up this often in each epoch.
RECORDED_TURNS = 10
# Batches are a multiple of 0.3 s long: each new length costs the Fourier transform a plan.
GRAIN = 4800
# Seconds; what is longer would make its batch too large.
LONGEST = 7
TOP_RATE = 2e-3
# In less, the learning rate would rise and fall for nothing.
LEAST_SECONDS = 60
# How much the second head, halfway up, counts.
HALFWAY_SHARE = 0.3
RANK, WORLD = int(os.environ.get('RANK', 0)), int(os.environ.get('WORLD_SIZE', 1))
device = f'cuda:{RANK}' if torch.cuda.is_available() else 'cpu'


def numbered(phones):
    number = {phone: index + 1 for index, phone in enumerate(PHONES)}
    return [number[phone] for phone in phones.split()]


class Corpus:
    def __init__(self, folder, name, recorded=None, turns=1, but=()):
        rows = [line.split('\t') for line in (folder / f'{name}.tsv').read_text().splitlines()]
        sound, lengths, said = np.load(folder / f'{name}.npy'), [int(row[0]) for row in rows], [row[2] for row in rows]
        use = np.flatnonzero([row[1] not in but for row in rows])
        self.spoken = len(rows)
        if recorded is not None:
            use = np.concatenate([use, np.tile(len(lengths) + np.arange(len(recorded['lengths'])), turns)])
            sound = np.concatenate([sound, recorded['sound']])
            lengths, said = lengths + list(recorded['lengths']), said + list(recorded['phones'])
        self.sound = torch.from_numpy(sound).to(device)
        lengths = np.array(lengths)
        self.use = torch.from_numpy(use).to(device)
        self.lengths = torch.from_numpy(lengths).to(device)
        self.offsets = torch.from_numpy(np.cumsum(lengths) - lengths).to(device)
        said = [numbered(str(phones)) for phones in said]
        self.counts = torch.tensor([len(phones) for phones in said], device=device)
        self.phones = nn.utils.rnn.pad_sequence([torch.tensor(phones) for phones in said], True).to(device)

    def batches(self, size, shuffle=None):
        """Like lengths together, so that little is padding; in an order drawn from the number `shuffle`, the same on every GPU."""
        lengths = self.lengths[self.use]
        if shuffle is None:
            yield from self.use[torch.argsort(lengths)].split(size)
            return
        draw = torch.Generator().manual_seed(shuffle)
        jitter = torch.rand(len(lengths), generator=draw).to(device) * 0.2 + 0.9
        batches = self.use[torch.argsort(lengths * jitter)].split(size)
        for index in torch.randperm(len(batches), generator=draw):
            yield batches[index]

    def dry(self, batch, factor, wobble=0):
        """The clips at a new speed and size of speaker: batch x samples, and their new lengths.

        Up to `wobble` samples early or late, changing five times a second: no person speaks as evenly as a machine.
        """
        lengths = (self.lengths[batch] / factor).long()
        longest = int(lengths.max())
        at = torch.arange(longest, device=device)[None] * factor[:, None]
        if wobble:
            knots = uniform(len(batch), 0, wobble)[:, None] * torch.randn(len(batch), max(2, longest // 3200), device=device)
            at = at + F.interpolate(knots.clamp(-wobble, wobble)[:, None], longest, mode='linear', align_corners=True)[:, 0]
            at = at.clamp(min=0)
        left = at.long()
        part = at - left
        last = self.lengths[batch][:, None] - 1
        base = self.offsets[batch][:, None]
        take = lambda index: self.sound[base + torch.minimum(index, last)].float()
        sound = take(left) * (1 - part) + take(left + 1) * part
        inside = torch.arange(sound.shape[1], device=device)[None] < lengths[:, None]
        return sound * inside / 32768, lengths


def uniform(n, low, high):
    return torch.rand(n, device=device) * (high - low) + low


def rooms(n, length=6400):
    """Impulse responses: the direct sound and an exponential tail that falls 60 dB in 0.1 to 0.5 s."""
    at = torch.arange(length, device=device)[None] / RATE
    fall = uniform(n, 0.1, 0.5)[:, None]
    tail = torch.randn(n, length, device=device) * 10 ** (-3 * at / fall)
    tail[:, :40] = 0
    tail = tail / tail.norm(dim=1, keepdim=True)
    wet = 10 ** (uniform(n, -25, 2) / 20)[:, None] * (torch.rand(n, 1, device=device) < 0.7)
    tail = tail * wet
    tail[:, 0] = 1
    return tail


def equaliser(n, bins):
    """A random smooth gain over frequency; one clip in seven is as narrow as a telephone or a cheap microphone."""
    knots = torch.randn(n, 1, 8, device=device) * 4
    gain = F.interpolate(knots, bins, mode='linear', align_corners=True)[:, 0]
    gain = gain + torch.linspace(-1, 1, bins, device=device)[None] * uniform(n, -8, 8)[:, None]
    hz = torch.linspace(0, RATE / 2, bins, device=device)[None]
    top = uniform(n, 3300, 4000)[:, None]
    narrow = torch.rand(n, 1, device=device) < 0.15
    gain = gain - narrow * ((hz > top).float() * 45 + (hz < uniform(n, 50, 300)[:, None]) * 20)
    return 10 ** (gain / 20)


def noise(n, length, babble):
    """Pink, brown, white or banded noise, swelling as a boil does, or other people's talk."""
    spectrum = torch.fft.rfft(torch.randn(n, length, device=device))
    hz = torch.linspace(1, RATE / 2, spectrum.shape[1], device=device)[None]
    slope = uniform(n, -1.2, 0.2)[:, None]
    shape = (hz.clamp(min=40) / 500) ** slope
    centre, wide = uniform(n, 200, 4000)[:, None], uniform(n, 0.3, 2)[:, None]
    band = torch.exp(-(torch.log2(hz / centre) / wide) ** 2) * uniform(n, 0, 6)[:, None]
    banded = torch.rand(n, 1, device=device) < 0.6
    steady = torch.fft.irfft(spectrum * shape, length)
    bubbling = torch.fft.irfft(torch.fft.rfft(torch.randn(n, length, device=device)) * band, length)
    points = max(2, int(length / RATE * 11))
    rate = torch.rand(n, 1, points, device=device)
    swell = F.interpolate(rate, length, mode='linear', align_corners=True)[:, 0] ** uniform(n, 0, 2.5)[:, None]
    made = unit(steady) * uniform(n, 0.1, 1)[:, None] + banded * unit(bubbling * swell) * uniform(n, 0, 1.5)[:, None]
    talk = sum(torch.roll(babble, int(shift), 0).roll(int(at), 1) for shift, at in
               zip(torch.randint(1, max(2, n), (4,)), torch.randint(0, length, (4,))))
    made = unit(made) + (torch.rand(n, 1, device=device) < 0.2) * uniform(n, 0.2, 1)[:, None] * unit(clinks(n, length))
    made = made + (torch.rand(n, 1, device=device) < 0.12) * uniform(n, 0.3, 2)[:, None] * unit(tunes(n, length))
    talking = torch.rand(n, 1, device=device) < 0.12
    return torch.where(talking, unit(talk) + 0.3 * unit(made), unit(made))


def clinks(n, length):
    """Spoons, lids and jars: a few knocks, each a handful of tones that ring out in 20 to 200 ms."""
    at = torch.arange(length, device=device)[None] / RATE
    out = torch.zeros(n, length, device=device)
    for _ in range(3):
        since = at - uniform(n, 0, length / RATE)[:, None]
        ring = torch.exp(-since.clamp(min=0) / uniform(n, 0.02, 0.2)[:, None]) * (since >= 0)
        for _ in range(3):
            out += ring * torch.sin(2 * math.pi * uniform(n, 600, 6500)[:, None] * since) * uniform(n, 0, 1)[:, None]
    return out + 1e-6 * torch.randn_like(out)


def tunes(n, length):
    """Music from a radio: two voices of four harmonics each, a new note about three times a second."""
    out = torch.zeros(n, length, device=device)
    notes = max(2, int(length / RATE * 3))
    for _ in range(2):
        hz = 110 * 2 ** (torch.randint(0, 30, (n, 1, notes), device=device) / 12)
        hz = F.interpolate(hz, length, mode='nearest')[:, 0]
        phase = 2 * math.pi * torch.cumsum(hz / RATE, 1)
        for harmonic in range(1, 5):
            out += torch.sin(harmonic * phase) / harmonic * uniform(n, 0.2, 1)[:, None]
    return out


def unit(sound):
    return sound / sound.pow(2).mean(1, keepdim=True).sqrt().clamp(min=1e-6)


def kitchen(corpus, batch):
    """The clips as a kitchen might send them: new speaker size, room, microphone, noise and cut each time."""
    n = len(batch)
    dry, lengths = corpus.dry(batch, uniform(n, 0.85, 1.18), 220)
    loud = dry.pow(2).sum(1) / lengths
    dry = dry / loud.sqrt().clamp(min=1e-4)[:, None]
    lead, trail = uniform(n, 0.05, 0.45), uniform(n, 0.05, 0.45)
    lead, trail = (lead * RATE).long(), (trail * RATE).long()
    total = lengths + lead + trail
    size = int(total.max())
    size += -(size - WINDOW) % GRAIN
    at = torch.arange(size, device=device)[None] - lead[:, None]
    dry = F.pad(dry, (0, 1))
    placed = dry.gather(1, torch.where((at >= 0) & (at < dry.shape[1]), at, dry.shape[1] - 1))
    turns = 1 << (size + 6400 - 1).bit_length()
    shaped = torch.fft.rfft(placed, turns) * torch.fft.rfft(rooms(n), turns)
    speech = torch.fft.irfft(shaped * equaliser(n, shaped.shape[1]), turns)[:, :size]
    speech = unit(speech) * (size / lengths)[:, None].sqrt()
    below = torch.where(torch.rand(n, device=device) < 0.2, uniform(n, 28, 60), uniform(n, -5, 26))
    sound = speech + noise(n, size, speech) * 10 ** (-below / 20)[:, None]
    clipped = torch.rand(n, 1, device=device) < 0.1
    return torch.where(clipped, torch.tanh(sound / 2) * 2, sound), total


def masked(x, counts):
    """A few bands and a short time blanked out, in half of the clips."""
    n, bands, frames = x.shape
    for axis, size, most in ((1, bands, 7), (1, bands, 5), (2, frames, 10)):
        width = uniform(n, 0, most) * (torch.rand(n, device=device) < 0.5)
        start = uniform(n, 0, 1) * (size - width)
        at = torch.arange(size, device=device)[None]
        hidden = (at >= start[:, None]) & (at < (start + width)[:, None])
        x = x * ~(hidden[:, :, None] if axis == 1 else hidden[:, None])
    return x


def errors(logs, counts, phones, phone_counts):
    """Edit distance of the free best path to what was said, and the number of phones said."""
    best = logs.argmax(1).cpu().numpy()
    wrong = 0
    for path, count, said, length in zip(best, counts.tolist(), phones.tolist(), phone_counts.tolist()):
        heard = [p for i, p in enumerate(path[:count]) if p != 0 and (i == 0 or p != path[i - 1])]
        row = list(range(length + 1))
        for i, p in enumerate(heard):
            last, row[0] = row[0], i + 1
            for j in range(length):
                last, row[j + 1] = row[j + 1], min(row[j + 1] + 1, row[j] + 1, last + (p != said[j]))
        wrong += row[length]
    return wrong, int(phone_counts.sum())


def check(network, corpus, filters, window, below):
    network.eval()
    wrong = said = 0
    with torch.no_grad():
        for batch in corpus.batches(100):
            dry, lengths = corpus.dry(batch, torch.ones(len(batch), device=device))
            sound = F.pad(dry, (4000, 3200))
            sound = F.pad(sound, (0, -(sound.shape[1] - WINDOW) % GRAIN))
            sound = unit(sound) * (sound.shape[1] / lengths)[:, None].sqrt()
            sound = sound + noise(len(batch), sound.shape[1], sound) * 10 ** (-below / 20)
            x, counts = features(sound, lengths + 7200, filters, window)
            logs, counts = network(x, counts)
            more = errors(logs, counts, corpus.phones[batch], corpus.counts[batch])
            wrong, said = wrong + more[0], said + more[1]
    network.train()
    return 100 * wrong / said


def gathered(folder, but=()):
    """The real people of recorded.npz and digits.npz, without the speakers named."""
    parts = [np.load(folder / name) for name in ('recorded.npz', 'digits.npz') if (folder / name).exists()]
    out = {'sound': [], 'lengths': [], 'phones': []}
    for part in parts:
        sound, lengths = part['sound'], part['lengths']
        ends = np.cumsum(lengths)
        for voice, length, end, phones in zip(part['voices'], lengths, ends, part['phones']):
            if str(voice) not in but and length < LONGEST * RATE:
                out['sound'].append(expanded(sound[end - length : end]))
                out['lengths'].append(int(length))
                out['phones'].append(str(phones))
    return out | {'sound': np.concatenate(out['sound'])} if out['sound'] else None


def expanded(sound):
    """Eight bits on the telephone's curve (mu = 255, ITU-T G.711) back to sixteen."""
    part = sound.astype(np.float32) / 127
    return (np.sign(part) * (np.power(256.0, np.abs(part)) - 1) / 255 * 32767).astype(np.int16)


DIGITS = {'zero': ['Z IH R OW', 'Z IY R OW'], 'one': ['W AH N'], 'two': ['T UW'], 'three': ['TH R IY'], 'four': ['F AO R'],
          'five': ['F AY V'], 'six': ['S IH K S'], 'seven': ['S EH V AH N'], 'eight': ['EY T'], 'nine': ['N AY N']}


def check_digits(network, folder, filters, window):
    """Share of single digits of real people read rightly, by speaker: ten open, for some prices of a sound."""
    if not (folder / 'digits.npz').exists():
        return ''
    network.eval()
    part = np.load(folder / 'digits.npz')
    ends, right = np.cumsum(part['lengths']), {}
    ways = [(word, torch.tensor(numbered(way), device=device)) for word, list_ in DIGITS.items() for way in list_]
    with torch.no_grad():
        for at in range(0, len(ends), 100):
            batch = range(at, min(at + 100, len(ends)))
            sounds = [torch.from_numpy(expanded(part['sound'][ends[i] - part['lengths'][i] : ends[i]]).astype(np.float32) / 32768) for i in batch]
            lengths = torch.tensor([len(sound) + 6400 for sound in sounds], device=device)
            sound = nn.utils.rnn.pad_sequence([F.pad(sound, (3200, 3200)) for sound in sounds], True).to(device)
            x, counts = features(F.pad(sound, (0, -(sound.shape[1] - WINDOW) % GRAIN)), lengths, filters, window)
            logs, counts = network(x, counts)
            scores = torch.stack([-F.ctc_loss(logs.permute(2, 0, 1), way[None].repeat(len(batch), 1), counts,
                                              torch.full((len(batch),), len(way), device=device), reduction='none') for _, way in ways])
            sizes = torch.tensor([len(way) for _, way in ways], device=device)[:, None]
            for price in (0, 0.5, 1, 1.5):
                best = (scores + price * sizes).argmax(0).tolist()
                for i, k in zip(batch, best):
                    right.setdefault((price, str(part['voices'][i])), []).append(ways[k][0] == str(part['words'][i]))
    network.train()
    return 'digits ' + ', '.join(f'{voice} {price}: {100 * np.mean(list_):.0f} %' for (price, voice), list_ in sorted(right.items()))


def unfold(network, path, clips):
    """The weights of the page's file, with the normalisation it had folded in drawn out again from some clips."""
    from onnx import load, numpy_helper

    stored = {part.name: torch.from_numpy(numpy_helper.to_array(part).copy()).to(device) for part in load(path).graph.initializer}
    places = dict(network.named_modules())
    norms = []
    for name in {key.rpartition('.')[0] for key in stored}:
        place = f'blocks.{name}' if name[0].isdigit() else name
        conv, bias = places[place], stored[f'{name}.b']
        conv.weight.data = stored[f'{name}.w'].float() * stored[f'{name}.s'][:, None, None]
        norm = places.get(f'{place}_norm')
        if norm is None:
            conv.bias.data = bias
            continue
        norm.weight.data.fill_(1)
        norm.bias.data = bias.clone()
        norm.running_mean.zero_()
        norm.running_var.fill_(1 - norm.eps)
        norms.append((conv, norm))
    network.eval()
    for _ in range(20):
        x, counts = next(clips)
        met = {}
        hooks = [conv.register_forward_hook(lambda conv, _, out: met.__setitem__(conv, out.detach().double())) for conv, _ in norms]
        with torch.no_grad():
            network(x, counts)
        for hook in hooks:
            hook.remove()
        for conv, norm in norms:
            norm.seen = getattr(norm, 'seen', 0) + torch.stack([met[conv].mean((0, 2)), met[conv].pow(2).mean((0, 2))]) / 20
    for conv, norm in norms:
        mean, square = norm.seen.float()
        var = (square - mean * mean).clamp(min=1e-6)
        norm.bias.data += mean
        norm.weight.data = (var + norm.eps).sqrt()
        norm.running_mean, norm.running_var = mean.clone(), var.clone()
        del norm.seen
    network.train()


def kept(network, corpus, filters, window, most=2.5):
    """Which clips may stay: all synthesised ones, and recordings that lack less than `most` (natural log) for each sound.

    Some files' names lie about what is said in them.
    """
    network.eval()
    fits = torch.zeros(len(corpus.lengths), device=device)
    with torch.no_grad():
        for batch in corpus.batches(200):
            dry, lengths = corpus.dry(batch, torch.ones(len(batch), device=device))
            sound = F.pad(dry, (4000, 3200))
            sound = unit(F.pad(sound, (0, -(sound.shape[1] - WINDOW) % GRAIN)))
            x, counts = features(sound + 0.01 * torch.randn_like(sound), lengths + 7200, filters, window)
            logs, counts = network(x, counts)
            fits[batch] = F.ctc_loss(logs.permute(2, 0, 1), corpus.phones[batch], counts, corpus.counts[batch], reduction='none') / corpus.counts[batch]
    network.train()
    return ((fits < most) | (torch.arange(len(fits), device=device) < corpus.spoken))[corpus.use]


def train(folder, out, until, begin_from, but, turns, course=(0, 1)):
    torch.manual_seed(SEED + RANK)
    torch.backends.cudnn.allow_tf32 = True
    corpus, other = Corpus(folder, 'train', gathered(folder, but), turns, but), Corpus(folder, 'check')
    filters = mel_filters().to(device)
    throats = [mel_filters(warp).to(device) for warp in np.linspace(0.9, 1.12, 23)]
    window = torch.hann_window(WINDOW, device=device)
    network = Network().to(device)
    if begin_from and begin_from.endswith('.onnx'):
        unfold(network, begin_from, (features(*kitchen(corpus, batch), filters, window) for batch in corpus.batches(BATCH, SEED)))
    elif begin_from:
        network.load_state_dict(torch.load(begin_from, map_location=device))
    if begin_from:
        corpus.use = corpus.use[shared(kept(network, corpus, filters, window))]
        print(f'{len(corpus.use)} utterances keep to what is said of them', flush=True)
    for part in (*network.parameters(), *network.buffers()):
        part.data = shared(part.data)
    top_rate = (TOP_RATE / 2 if begin_from else TOP_RATE) * math.sqrt(WORLD)
    print(f'{sum(p.numel() for p in network.parameters())} weights, {len(corpus.use)} utterances', flush=True)
    optimiser = torch.optim.AdamW(network.parameters(), top_rate, weight_decay=0.01)
    begun, step, sum_loss = time.time(), 0, 0.0
    if until - begun < LEAST_SECONDS:
        raise SystemExit(f'{until - begun:.0f} s are left to train, and {LEAST_SECONDS} are the least')
    done, epoch = 0.0, int(1000 * course[0])
    while done < 1:
        epoch += 1
        for batch in corpus.batches(BATCH * WORLD, SEED + epoch):
            if len(batch) < 8 * WORLD:
                continue
            batch = batch[RANK::WORLD]
            done = agreed((time.time() - begun) / (until - begun))
            whole = course[0] + (course[1] - course[0]) * done
            if done >= 1:
                break
            rise = min(1, whole / 0.08)
            for group in optimiser.param_groups:
                group['lr'] = top_rate * (rise if rise < 1 else 0.5 * (1 + math.cos(math.pi * (whole - 0.08) / 0.92))) + 1e-6
            with torch.no_grad():
                sound, lengths = kitchen(corpus, batch)
                x, counts = features(sound, lengths, throats[step % len(throats)], window)
                x = masked(x, counts)
            with torch.autocast(device, torch.bfloat16):
                logs, counts, half = network(x, counts, both=True)
            fit = lambda logs: F.ctc_loss(logs.permute(2, 0, 1), corpus.phones[batch], counts, corpus.counts[batch], zero_infinity=True)
            loss = fit(logs) + HALFWAY_SHARE * fit(half)
            optimiser.zero_grad(set_to_none=True)
            loss.backward()
            average(network)
            nn.utils.clip_grad_norm_(network.parameters(), 5.0)
            optimiser.step()
            sum_loss += loss.detach()
            step += 1
            if step % 2000 == 0 and RANK == 0:
                print(f'{time.time() - begun:5.0f} s  epoch {epoch:3d}  step {step:6d}  loss {float(sum_loss) / 2000:.3f}  '
                      + table(network, folder, other, filters, window, (40, 10, 0)), flush=True)
                keep(network, out, filters, window)
            if step % 2000 == 0:
                sum_loss = 0.0
    if RANK > 0:
        return
    print(f'end: step {step}, epoch {epoch}', table(network, folder, other, filters, window, (40, 20, 10, 5, 0)), flush=True)
    keep(network, out, filters, window)


def shared(values):
    """The first GPU's values, on all."""
    if WORLD == 1:
        return values
    sent = values.to(device).contiguous() if values.dtype != torch.bool else values.to(device, torch.uint8)
    distributed.broadcast(sent, 0)
    return sent.to(values.dtype)


def agreed(value):
    """The first GPU's number, on all: their clocks differ, and all must stop at the same step."""
    return value if WORLD == 1 else float(shared(torch.tensor([value], dtype=torch.float64)))


def average(network):
    """The mean of the gradients of all GPUs."""
    if WORLD == 1:
        return
    slopes = [part.grad for part in network.parameters() if part.grad is not None]
    flat = torch.cat([slope.flatten() for slope in slopes])
    distributed.all_reduce(flat)
    for slope, mean in zip(slopes, (flat / WORLD).split([slope.numel() for slope in slopes])):
        slope.copy_(mean.view_as(slope))


def table(network, folder, other, filters, window, levels):
    wrong = ', '.join(f'{below} dB: {check(network, other, filters, window, below):.1f} %' for below in levels)
    return f'phone errors of unseen voices {wrong}  {check_digits(network, folder, filters, window)}'


def keep(network, out, filters, window):
    network.eval()
    torch.save(network.state_dict(), Path(out, 'network.pt'))
    save_onnx(network, out)
    torch.backends.cudnn.allow_tf32 = False
    fixture(network, out, filters, window)
    torch.backends.cudnn.allow_tf32 = True
    network.train()


def fixture(network, out, filters, window):
    """A made-up sound, its features and the network's answer, for the page's tests."""
    state, samples = 1, []
    for index in range(12000):
        state = (state * 1664525 + 1013904223) % 2**32
        samples.append(0.3 * math.sin(index * (0.02 + index * 4e-6)) + 0.02 * (state / 2**31 - 1))
    sound = torch.tensor([samples], device=device)
    with torch.no_grad():
        x, counts = features(sound, torch.tensor([12000], device=device), filters, window)
        logs, _ = network(x, counts)
    rounded = lambda grid: [[round(float(v), 4) for v in row] for row in grid]
    Path(out, 'fixture.json').write_text(json.dumps({'features': rounded(x[0]), 'logs': rounded(logs[0])}))


if __name__ == '__main__':
    parser = argparse.ArgumentParser()
    parser.add_argument('data', type=Path)
    parser.add_argument('out', type=Path)
    parser.add_argument('--until', type=float, required=True, help='seconds of the clock (time.time) to stop at')
    parser.add_argument('--from', dest='begin_from', help='weights to go on from')
    parser.add_argument('--but', default='', help='voices and real speakers to leave out, with commas between')
    parser.add_argument('--turns', type=int, default=RECORDED_TURNS)
    parser.add_argument('--part', default='0:1', help='which share of the whole course of the learning rate this run is')
    options = parser.parse_args()
    options.out.mkdir(parents=True, exist_ok=True)
    if WORLD > 1:
        distributed.init_process_group('nccl' if torch.cuda.is_available() else 'gloo')
        if torch.cuda.is_available():
            torch.cuda.set_device(RANK)
    train(options.data, options.out, options.until, options.begin_from, options.but.split(','), options.turns, tuple(map(float, options.part.split(':'))))
