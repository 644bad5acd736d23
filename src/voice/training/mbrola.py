"""Sentences spoken by diphone voices of mbrola: espeak says which sounds, how long and how high, and mbrola joins them.

What the network learns was said is the dictionary's way, as with all other voices: the same espeak says "was" and "apple"
so through its formants, and one sound must not have two names. Sentences that espeak reads as something else are left out.
us1, us3 and en1 are there to measure with and are never spoken here.
"""
import ctypes
import subprocess
from pathlib import Path

VOICES = ('us2', 'de1', 'de2', 'de3', 'de5')
GERMAN = VOICES[1:]
# What espeak asks mbrola us2 for, by our names.
OURS = {
    'p': 'P', 'p_h': 'P', 't': 'T', 't_h': 'T', '4': 'T', 'k': 'K', 'k_h': 'K', 'b': 'B', 'd': 'D', 'g': 'G', 'f': 'F', 's': 'S', 'S': 'SH',
    'tS': 'CH', 'T': 'TH', 'v': 'V', 'z': 'Z', 'Z': 'ZH', 'dZ': 'JH', 'D': 'DH', 'm': 'M', 'n': 'N', 'N': 'NG', 'l': 'L', 'r': 'R', 'j': 'Y',
    'w': 'W', 'h': 'HH', 'r=': 'ER', 'i': 'IY', 'A': 'AA', 'u': 'UW', 'I': 'IH', 'E': 'EH', '{': 'AE', 'V': 'AH', 'U': 'UH', '@': 'AH',
    'EI': 'EY', 'AI': 'AY', 'OI': 'OY', '@U': 'OW', 'aU': 'AW', 'O': 'AO', 'Or': 'AO',
}
# Where the two differ in these alone, it is the same word: weak vowels, "cot" and "caught", a flapped t.
SHADES = [{'AH', 'IH', 'UH', 'EH'}, {'IH', 'IY'}, {'AA', 'AO'}, {'T', 'D'}]
# The German voices' names of what they truly have. r, the dark vowels of "cup" and "cat", and "day" and "go" are not among them.
THEIRS = {
    **{sound: sound for sound in 'p t k b d g f s S tS v z Z m n N l j h E @ I U O'.split()},
    'p_h': 'p', 't_h': 't', 'k_h': 'k', 'i': 'i:', 'u': 'u:', 'A': 'a:', 'AI': 'aI', 'OI': 'OY', 'aU': 'aU',
}
IN_DE5 = {'w': 'w', 'T': 'T', 'D': 'D'}
# Times the pitch of espeak's man.
PITCH = {'us2': (0.85, 1.25), 'de1': (1.5, 2.1), 'de2': (0.8, 1.25), 'de3': (1.5, 2.1), 'de5': (1.4, 2.0)}
# Of the sounds of a sentence: apple's weak vowel and a vowel's r come and go.
FURTHEST = 0.25
FOLDER = Path('/usr/share/mbrola')


def asked(espeak, sentences, draw, path):
    """For each sentence the lines that espeak would have mbrola us2 say."""
    libc = ctypes.CDLL('libc.so.6')
    libc.fopen.restype = ctypes.c_void_p
    libc.fclose.argtypes = [ctypes.c_void_p]
    espeak.espeak_SetPhonemeTrace.argtypes = [ctypes.c_int, ctypes.c_void_p]
    if espeak.espeak_SetVoiceByName(b'mb-us2') != 0:
        raise ValueError('no voice mb-us2')
    out = []
    for sentence in sentences:
        for parameter, value in ((1, draw.randint(110, 225)), (3, draw.randint(15, 85)), (4, draw.randint(20, 90))):
            espeak.espeak_SetParameter(parameter, value, 0)
        file = libc.fopen(str(path).encode(), b'w')
        espeak.espeak_SetPhonemeTrace(0x10, file)
        text = sentence.encode() + b'\0'
        espeak.espeak_Synth(text, len(text), 0, 0, 0, 1, None, None)
        espeak.espeak_Synchronize()
        espeak.espeak_SetPhonemeTrace(0, None)
        libc.fclose(file)
        out.append([line for line in Path(path).read_text().splitlines() if line.strip()])
    return out


def close(one, other):
    return one == other or any(one in shade and other in shade for shade in SHADES)


def fits(lines, dictionary):
    """Whether the lines are the dictionary's words, give or take a shade: espeak reads some rare words as others."""
    said, told = [OURS[name] for name in names(lines) if name != '_'], dictionary.split()
    row = list(range(len(told) + 1))
    for i, sound in enumerate(said):
        last, row[0] = row[0], i + 1
        for j, other in enumerate(told):
            last, row[j + 1] = row[j + 1], min(row[j + 1] + 1, row[j] + 1, last + (not close(sound, other)))
    return row[-1] <= FURTHEST * len(told)


def names(lines):
    return [line.split('\t')[0].strip() for line in lines]


def lines_for(voice, lines):
    """The lines by the voice's own names; None where it lacks a sound."""
    if voice == 'us2':
        return lines
    theirs = {**THEIRS, '_': '_', **(IN_DE5 if voice == 'de5' else {})}
    if any(name not in theirs for name in names(lines)):
        return None
    return ['\t'.join([theirs[name], *line.split('\t')[1:]]) for name, line in zip(names(lines), lines)]


def say(espeak, items, draw, folder):
    """(phones, voice, path of the sound) of every (sentence, phones, voice) that the voice can say."""
    out = []
    for index, ((_, phones, voice), lines) in enumerate(zip(items, asked(espeak, [item[0] for item in items], draw, f'{folder}/asked'))):
        if voice not in VOICES:
            raise ValueError(f'{voice} is not to be learnt from')
        own = lines_for(voice, lines)
        if own is None or not fits(lines, phones):
            continue
        path = f'{folder}/mbrola{index}.wav'
        pitch = f'{draw.uniform(*PITCH[voice]):.2f}'
        # Not told to go on: where two sounds were not recorded side by side it stops, and the sentence is left out.
        done = subprocess.run(['mbrola', '-f', pitch, FOLDER / voice / voice, '-', path], input='\n'.join(own) + '\n', text=True, timeout=10,
                              capture_output=True)
        if done.returncode == 0 and not done.stderr.strip():
            out.append((phones, f'mbrola {voice}', path))
    return out
