"""The phoneme network: convolutions over 40 bands of sound, each block weighed by what the whole clip sounds like."""
import torch
from torch import nn
from torch.nn import functional as F

PHONES = (
    'AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG OW OY P R S SH T TH UH UW V W Y Z ZH'.split()
)
CHANNELS, HIDDEN, KERNEL, SQUEEZED = 256, 512, 9, 32
DILATIONS = (1, 1, 2, 2, 1, 1, 2, 2, 1, 1)
# After this block a second head is trained too, so that the early blocks learn sounds; it is thrown away.
HALFWAY = 5


class Block(nn.Module):
    def __init__(self, dilation):
        super().__init__()
        self.deep = nn.Conv1d(CHANNELS, CHANNELS, KERNEL, padding=KERNEL // 2 * dilation, dilation=dilation,
                              groups=CHANNELS, bias=False)
        self.deep_norm = nn.BatchNorm1d(CHANNELS)
        self.widen = nn.Conv1d(CHANNELS, HIDDEN, 1, bias=False)
        self.widen_norm = nn.BatchNorm1d(HIDDEN)
        self.narrow = nn.Conv1d(HIDDEN, CHANNELS, 1, bias=False)
        self.narrow_norm = nn.BatchNorm1d(CHANNELS)
        self.squeeze = nn.Conv1d(CHANNELS, SQUEEZED, 1)
        self.excite = nn.Conv1d(SQUEEZED, CHANNELS, 1)

    def forward(self, x, inside):
        y = F.relu(self.widen_norm(self.widen(self.deep_norm(self.deep(x)))))
        y = self.narrow_norm(self.narrow(F.dropout(y, 0.1, self.training))) * inside
        mean = y.sum(2, keepdim=True) / inside.sum(2, keepdim=True)
        return x + y * torch.sigmoid(self.excite(F.relu(self.squeeze(mean))))


class Network(nn.Module):
    """40 bands at 10 ms in, log probabilities of blank and 39 phones at 40 ms out."""

    def __init__(self):
        super().__init__()
        self.first = nn.Conv1d(40, CHANNELS, 5, stride=2, padding=2, bias=False)
        self.first_norm = nn.BatchNorm1d(CHANNELS)
        self.second = nn.Conv1d(CHANNELS, CHANNELS, 5, stride=2, padding=2, bias=False)
        self.second_norm = nn.BatchNorm1d(CHANNELS)
        self.blocks = nn.ModuleList(Block(dilation) for dilation in DILATIONS)
        self.head = nn.Conv1d(CHANNELS, len(PHONES) + 1, 1)
        self.halfway = nn.Conv1d(CHANNELS, len(PHONES) + 1, 1)

    def forward(self, x, counts, both=False):
        counts = (counts + 1) // 2
        x = F.relu(self.first_norm(self.first(x)))
        x = x * within(x, counts)
        counts = (counts + 1) // 2
        x = F.relu(self.second_norm(self.second(x)))
        inside = within(x, counts)
        x = x * inside
        half = None
        for index, block in enumerate(self.blocks):
            x = block(x, inside)
            if both and index + 1 == HALFWAY:
                half = F.log_softmax(self.halfway(x).float(), 1)
        logs = F.log_softmax(self.head(x).float(), 1)
        return (logs, counts, half) if both else (logs, counts)


def within(x, counts):
    return (torch.arange(x.shape[2], device=x.device)[None] < counts[:, None]).to(x.dtype)[:, None]
