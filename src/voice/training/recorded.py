"""Gathers what few words real people say in free packages, with their sounds: python3 recorded.py FOLDER DICT OUT.npz,
and single digits: python3 recorded.py digits FOLDER DICT OUT.npz. FOLDER holds the unpacked packages asterisk-core-sounds-en-g722 (CC BY-SA 3.0), tuxpaint-stamps-default,
ktuberling-data, klettres-data and hedgewars-data (GPL). The words are the files' own names and descriptions. Needs ffmpeg.
"""
import re
import subprocess
import sys
from pathlib import Path

import numpy as np

ORDINALS = 'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth'.split()
NUMBERS = 'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty'.split()
TENS = {30: 'thirty', 40: 'forty', 50: 'fifty', 60: 'sixty', 70: 'seventy', 80: 'eighty', 90: 'ninety'}
DAYS = 'sunday monday tuesday wednesday thursday friday saturday'.split()
MONTHS = 'january february march april may june july august september october november december'.split()
SPELLING = 'alpha bravo charlie delta echo foxtrot golf hotel india juliet kilo lima mike november oscar papa quebec romeo sierra tango uniform victor whiskey x-ray yankee zulu'.split()
PLAIN = (
    'activated added cancelled disabled enabled extension goodbye hello hours invalid minute minutes number removed '
    'second seconds sorry location lowercase calling is for please-try-again one-moment-please speed-dial do-not-disturb '
    'call-forwarding call-waiting hello-world is-set-to im-sorry'
).split()
LETTERS = {letter: letter for letter in 'abcdefghijklmnopqrstuvwxyz'}
SIGNS = {'asterisk': 'asterisk', 'at': 'at', 'dash': 'dash', 'dollar': 'dollar', 'dot': 'dot', 'equals': 'equals',
         'plus': 'plus', 'slash': 'slash', 'space': 'space'}


def telephone(path):
    """The words of a telephone prompt, from its name; None where the name does not say."""
    name, room = path.stem, path.parent.name
    if room == 'digits':
        if name.isdigit():
            return NUMBERS[int(name)] if int(name) <= 20 else TENS[int(name)]
        kind, _, value = name.partition('-')
        if kind == 'h' and value.isdigit():
            return ORDINALS[int(value) - 1] if int(value) <= 20 else None
        if kind == 'day':
            return DAYS[int(value)]
        if kind == 'mon':
            return MONTHS[int(value)]
        return {'oclock': "o'clock"}.get(name, name) if name.isalpha() else None
    if room == 'letters':
        return LETTERS.get(name) or SIGNS.get(name)
    if room == 'phonetic':
        return SPELLING['abcdefghijklmnopqrstuvwxyz'.index(name[0])].replace('-', ' ') if name[0].isalpha() else None
    if name in PLAIN:
        return name.replace('-', ' ').replace('im ', "i'm ")
    return PROMPTS.get(f'{room}/{name}') or PROMPTS.get(name)


PROMPTS = {}


def prompts(folder):
    """What the longer telephone prompts say: core-sounds-en.txt of the package's source, laid in the folder."""
    told = Path(folder, 'core-sounds-en.txt')
    for line in told.read_text().splitlines() if told.exists() else ():
        name, _, text = line.partition(': ')
        words = re.sub(r'\b\d\b', lambda found: NUMBERS[int(found[0])], text.lower())
        PROMPTS[name] = ' '.join(re.sub("[^a-z' ]", ' ', words).split())


def described(path):
    text = path.with_name(path.name.replace('_desc.ogg', '.txt'))
    line = text.read_text(errors='replace').splitlines()[0] if text.exists() else ''
    return re.sub('[^a-z ]', '', line.lower()).strip() or None


def toy(path):
    return {'broccolli': 'broccoli', 'fallingstar': None, 'moonwalker': None, 'palmtree': 'palm tree', 'ufo': None, 'sphynx': 'sphinx'}.get(
        path.stem.split('_')[-1], path.stem.split('_')[-1])


def letter(path):
    name = path.stem.lower()
    return name if len(name) != 2 or name in ('me', 'my', 'no', 'or') else None


SHOUTS = {
    'Youllregretthat': "you'll regret that", 'Yessir': 'yes sir', 'Watchit': 'watch it', 'Sameteam': 'same team', 'Takecover': 'take cover',
    'Illgetyou': "i'll get you", 'Firstblood': 'first blood', 'Enemydown': 'enemy down', 'Comeonthen': 'come on then', 'Byebye': 'bye bye',
    'Justyouwait': 'just you wait', 'Flyaway': 'fly away', 'Leavemealone': 'leave me alone', 'Cutitout': 'cut it out',
    'Watchthis': 'watch this', 'Solong': 'so long', 'Runaway': 'run away', 'Ohdear': 'oh dear', 'Gonnagetyou': 'gonna get you',
    'Thisoneismine': 'this one is mine', 'Whatthe': 'what the',
} | {word.capitalize(): word for word in (
    'victory traitor stupid reinforcements oops missed incoming hurry hello flawless coward boring melon grenade fire excellent '
    'drat brilliant amazing revenge').split()}
SPEAKERS = ('British', 'Classic', 'Default', 'HillBilly', 'Mobster', 'Pirate', 'Russian', 'Singer', 'Surfer')


def shouted(path):
    """What a figure of hedgewars-data (GPL-2) shouts, if it keeps to its file's name: the filter of main sees to that."""
    return SHOUTS.get(path.stem) if path.parent.name in SPEAKERS else None


SOURCES = (('*/voices/*/*.ogg', shouted), ('*.g722', telephone), ('*_desc.ogg', described), ('*/sounds/en/*.ogg', toy), ('*/klettres/en*/*/*.ogg', letter))


def dictionary(path):
    ways = {}
    for line in Path(path).read_text(errors='replace').splitlines():
        word, _, sounds = line.partition(' ')
        if not word.endswith(')'):
            ways.setdefault(word, sounds.strip())
    ways.update(a='EY')
    return ways


def main(folder, dictionary_path, out):
    ways = dictionary(dictionary_path)
    prompts(folder)
    rows = []
    for pattern, words_of in SOURCES:
        for path in sorted(Path(folder).rglob(pattern)):
            words = words_of(path)
            spoken = words.split() if words else []
            if not spoken or any(word not in ways for word in spoken):
                continue
            # "a frog" has the weak vowel, the letter alone the strong one.
            sounds = ' '.join('AH' if word == 'a' and len(spoken) > 1 else ways[word] for word in spoken)
            sound = decoded(path)
            loud = np.flatnonzero(np.abs(sound.astype(np.int32)) > 0.03 * np.abs(sound.astype(np.int32)).max())
            rows.append((words, sounds, path.parts[-2], sound[max(0, loud[0] - 800) : loud[-1] + 1600]))
    print(len(rows), 'recordings', sum(len(row[3]) for row in rows) / 16000, 's')
    np.savez_compressed(out, **packed(rows))


def digits(folder, dictionary_path, out):
    """The same of single digits, file name digit_speaker_take.wav, 8 kHz."""
    ways, rows = dictionary(dictionary_path), []
    for path in sorted(Path(folder).glob('*.wav')):
        digit, speaker, _ = path.stem.split('_')
        word = NUMBERS[int(digit)]
        rows.append((word, ways[word], speaker, decoded(path)))
    np.savez_compressed(out, **packed(rows))


def decoded(path):
    form = ['-f', 'g722'] if path.suffix == '.g722' else []
    raw = subprocess.run(['ffmpeg', '-v', 'error', *form, '-i', path, '-ac', '1', '-ar', '16000', '-f', 's16le', '-'],
                         check=True, capture_output=True).stdout
    return np.frombuffer(raw, np.int16)


def packed(rows):
    words, phones, voices, sounds = zip(*rows)
    return {'words': words, 'phones': phones, 'voices': voices, 'lengths': [len(sound) for sound in sounds],
            'sound': compressed(np.concatenate(sounds))}


def compressed(sound):
    """Sixteen bits to eight on the telephone's curve (mu = 255, ITU-T G.711)."""
    part = sound.astype(np.float32) / 32767
    return np.round(127 * np.sign(part) * np.log1p(255 * np.abs(part)) / np.log(256)).astype(np.int8)


if __name__ == '__main__':
    (digits if sys.argv[1] == 'digits' else main)(*sys.argv[-3:])
