"""The front end in PyTorch, sample for sample what src/voice/network/frontEnd.ts computes in the page."""
import math

import torch

RATE, WINDOW, HOP, FFT, BANDS = 16000, 400, 160, 512, 40
LOW_HZ, HIGH_HZ = 80.0, 7600.0
FLOOR = 1e-4
SCALE = 3.0


def mel_filters(warp=1.0):
    """40 triangles on the mel scale of O'Shaughnessy (2595 log10(1 + f / 700)); warp > 1 is a longer vocal tract."""
    mel = lambda hz: 2595 * math.log10(1 + hz / 700)
    edges = torch.linspace(mel(LOW_HZ), mel(HIGH_HZ), BANDS + 2, dtype=torch.float64)
    edges = 700 * (10 ** (edges / 2595) - 1)
    bins = torch.arange(FFT // 2 + 1, dtype=torch.float64) * RATE / FFT * warp
    rising = (bins[None] - edges[:-2, None]) / (edges[1:-1] - edges[:-2])[:, None]
    falling = (edges[2:, None] - bins[None]) / (edges[2:] - edges[1:-1])[:, None]
    return torch.minimum(rising, falling).clamp(min=0).float()


def features(sound, lengths, filters, window):
    """sound: batch x samples, lengths in samples; gives batch x 40 x frames with zeros after each clip's end."""
    frames = sound.unfold(1, WINDOW, HOP) * window
    power = torch.fft.rfft(frames, FFT).abs() ** 2 @ filters.T
    counts = (lengths - WINDOW) // HOP + 1
    inside = (torch.arange(power.shape[1], device=sound.device)[None] < counts[:, None]).float()
    total = power.sum(2) * inside
    mean = total.sum(1) / counts
    # As much even noise as would lie 40 dB under the clip: silence of a synthesiser must not look special.
    widths = filters.sum(1) / filters.sum()
    logs = torch.log(power + FLOOR * mean[:, None, None] * widths + 1e-20)
    # The mean of what is loud, so that the channel is taken out and the length of the pauses does not matter.
    weight = total / (total + mean[:, None] + 1e-20) * inside
    centre = (logs * weight[:, :, None]).sum(1) / weight.sum(1, keepdim=True).clamp(min=1e-6)
    return ((logs - centre[:, None]) / SCALE * inside[:, :, None]).transpose(1, 2), counts
