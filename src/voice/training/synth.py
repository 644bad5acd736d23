"""Speaks the training sentences with every training voice: TRACT=PACKAGE python3 synth.py texts.tsv OUTDIR [--jobs N].

The voices of HELD are spoken too: train.py leaves them out where it is told to (--but), so that what it learns can be
measured on them. Nobody here speaks with the voices that README.md keeps for measuring.
"""
import argparse
import ctypes
import json
import os
import random
import subprocess
import tempfile
import time
import wave
from multiprocessing import Process
from pathlib import Path

import numpy as np

import mbrola
import tract

SEED = 20260925
RATE = 16000
ESPEAK_LANGUAGES = ['en-us', 'en', 'en-gb-scotland', 'en-gb-x-gbclan', 'en-gb-x-gbcwmd', 'en-029', 'en-us-nyc']
ESPEAK_VARIANTS = (
    'm1 m2 m3 m4 m5 m6 m7 m8 f1 f3 f5 Alex Alicia Andrea Andy Annie Denis Diogo Gene Gene2 Henrique Hugo Jacky '
    'Lee Marco Mario Michael Mike Nguyen Storm Tweaky adam anika antonio aunty belinda benjamin boris caleb croak '
    'david ed edward edward2 grandma grandpa gustave iven iven2 iven3 iven4 john kaukovalta klatt klatt2 klatt3 '
    'klatt4 linda marcelo max michel miguel norbert pablo paul pedro quincy rob robert sandro shelby steph steph2 '
    'steph3 travis victor zac'
).split()
KITCHEN_TURNS = 6
# A job of 200 sentences takes a few seconds.
JOB_SECONDS = 45
SHARES = {'espeak': 0.38, 'flite': 0.15, 'kal16': 0.03, 'pico': 0.07, 'pico en-GB': 0.06, 'ked': 0.05, 'kal': 0.03, 'rab': 0.05, 'slt': 0.03,
          'alan': 0.04, 'bdl': 0.04, 'clb': 0.06, 'tract': 0.07}
# Of all that is said in English; what the German voices can say has lines of its own in texts.tsv.
US2_SHARE = 0.17
RHVOICE = ('alan', 'bdl', 'clb')
HELD = ('kal16', 'kal', 'pico en-GB')
# The unpacked package that tract.py speaks with.
TRACT = os.environ.get('TRACT', 'gnuspeech')
RHVOICE_DATA = os.environ.get('RHVOICE_DATA', '/usr/share/RHVoice')
RHVOICE_CONFIG = os.environ.get('RHVOICE_CONFIG', '/etc/RHVoice')


def planned(texts, without=()):
    """(sentence, phones, voice family) of every utterance, shuffled, with the seed."""
    draw = random.Random(SEED)
    shares = {family: share for family, share in SHARES.items() if family not in without}
    if 'mbrola' not in without:
        shares['us2'] = sum(shares.values()) * US2_SHARE / (1 - US2_SHARE)
    german = [text for text in texts if text[0].startswith('german')]
    texts = [text for text in texts if not text[0].startswith('german')]
    plan = []
    for kind, sentence, phones in texts:
        for _ in range(KITCHEN_TURNS if kind == 'kitchen' else 1):
            plan.append((sentence, phones, draw.choices(list(shares), shares.values())[0]))
    if 'mbrola' not in without:
        plan += [(sentence, phones, 'de5' if kind == 'german5' else draw.choice(mbrola.GERMAN)) for kind, sentence, phones in german]
    draw.shuffle(plan)
    check = [(sentence, phones, family) for kind, sentence, phones in draw.sample(texts, 250) for family in (*HELD, 'f2')]
    return plan, check


def resampled(sound, rate):
    if rate == RATE or len(sound) == 0:
        return sound
    length = int(len(sound) * RATE / rate)
    spectrum = np.fft.rfft(sound.astype(np.float32))[: length // 2 + 1]
    padded = np.zeros(length // 2 + 1, np.complex64)
    padded[: len(spectrum)] = spectrum
    return np.clip(np.fft.irfft(padded, length) * length / len(sound), -32768, 32767).astype(np.int16)


def read_wave(path):
    with wave.open(str(path)) as file:
        return resampled(np.frombuffer(file.readframes(file.getnframes()), np.int16), file.getframerate())


espeak = None
spoken = []
CALLBACK = ctypes.CFUNCTYPE(ctypes.c_int, ctypes.POINTER(ctypes.c_short), ctypes.c_int, ctypes.c_void_p)


@CALLBACK
def keep(samples, count, _events):
    if samples and count > 0:
        spoken.append(np.ctypeslib.as_array(samples, (count,)).copy())
    return 0


def open_espeak():
    global espeak
    if espeak is None:
        espeak = ctypes.CDLL('libespeak-ng.so.1')
        espeak.rate = espeak.espeak_Initialize(2, 0, None, 0)
        espeak.espeak_SetSynthCallback(keep)
    return espeak


def say_espeak(sentence, draw, voice=None):
    open_espeak()
    voice = voice or f'{draw.choice(ESPEAK_LANGUAGES)}+{draw.choice(ESPEAK_VARIANTS)}'
    if espeak.espeak_SetVoiceByName(voice.encode()) != 0:
        raise ValueError(f'no voice {voice}')
    for parameter, value in ((1, draw.randint(110, 225)), (3, draw.randint(15, 85)), (4, draw.randint(20, 90))):
        espeak.espeak_SetParameter(parameter, value, 0)
    spoken.clear()
    text = sentence.encode() + b'\0'
    espeak.espeak_Synth(text, len(text), 0, 0, 0, 1, None, None)
    espeak.espeak_Synchronize()
    return voice, resampled(np.concatenate(spoken), espeak.rate)


rhvoice = None


class Callbacks(ctypes.Structure):
    _fields_ = [('set_sample_rate', ctypes.CFUNCTYPE(ctypes.c_int, ctypes.c_int, ctypes.c_void_p)),
                ('play_speech', ctypes.CFUNCTYPE(ctypes.c_int, ctypes.POINTER(ctypes.c_short), ctypes.c_uint, ctypes.c_void_p)),
                ('unused', ctypes.c_void_p * 7)]


class InitParams(ctypes.Structure):
    _fields_ = [('data_path', ctypes.c_char_p), ('config_path', ctypes.c_char_p), ('resource_paths', ctypes.c_void_p),
                ('callbacks', Callbacks), ('options', ctypes.c_uint)]


class SynthParams(ctypes.Structure):
    _fields_ = [('voice_profile', ctypes.c_char_p), ('absolute', ctypes.c_double * 3), ('relative', ctypes.c_double * 3),
                ('punctuation_mode', ctypes.c_int), ('punctuation_list', ctypes.c_char_p), ('capitals_mode', ctypes.c_int), ('flags', ctypes.c_int)]


def say_rhvoice(sentence, draw, voice):
    global rhvoice
    if rhvoice is None:
        rhvoice = ctypes.CDLL('libRHVoice.so.5')
        rhvoice.RHVoice_new_tts_engine.restype = rhvoice.RHVoice_new_message.restype = ctypes.c_void_p
        rhvoice.RHVoice_delete_message.argtypes = rhvoice.RHVoice_speak.argtypes = [ctypes.c_void_p]
        told = Callbacks()
        told.set_sample_rate = Callbacks._fields_[0][1](lambda rate, _: setattr(rhvoice, 'rate', rate) or 1)
        told.play_speech = Callbacks._fields_[1][1](lambda samples, count, _: keep(samples, count, None) or 1)
        rhvoice.begun = InitParams(RHVOICE_DATA.encode(), RHVOICE_CONFIG.encode(), None, told, 0)
        rhvoice.engine = ctypes.c_void_p(rhvoice.RHVoice_new_tts_engine(ctypes.byref(rhvoice.begun)))
        if not rhvoice.engine:
            raise ValueError(f'no voices in {RHVOICE_DATA}')
    spoken.clear()
    relative = (ctypes.c_double * 3)(draw.uniform(0.8, 1.35), draw.uniform(0.8, 1.25), 1)
    manner = SynthParams(voice.encode(), (ctypes.c_double * 3)(), relative, 0, None, 0, 0)
    text = sentence.encode()
    message = rhvoice.RHVoice_new_message(rhvoice.engine, text, len(text), 0, ctypes.byref(manner), None)
    if not message or not rhvoice.RHVoice_speak(message):
        raise ValueError(f'{voice} cannot say {sentence}')
    rhvoice.RHVoice_delete_message(message)
    return resampled(np.concatenate(spoken), rhvoice.rate)


def say_flite(sentence, draw, folder, voices=(('rms', 75, 135), ('awb', 95, 175), ('slt', 140, 240))):
    voice, low, high = draw.choice(voices)
    path = Path(folder) / 'flite.wav'
    settings = ['--setf', f'duration_stretch={draw.uniform(0.75, 1.35):.2f}']
    settings += ['--setf', f'int_f0_target_mean={draw.uniform(low, high):.0f}']
    subprocess.run(['flite', '-voice', voice, *settings, '-t', sentence, '-o', path], check=True, timeout=10)
    return f'flite {voice}', read_wave(path)


def say_pico(sentence, draw, folder, language):
    path = Path(folder) / 'pico.wav'
    text = f"<speed level='{draw.randint(75, 150)}'><pitch level='{draw.randint(75, 130)}'>{sentence}</pitch></speed>"
    subprocess.run(['pico2wave', '-l', language, '-w', path, text], check=True, timeout=10)
    return f'pico {language}', read_wave(path)


def say_festival(sentences, draw, folder, voice):
    """All of a worker's sentences in one run of the program: starting it costs more than speaking."""
    lines = [f'(voice_{voice})', '(define (say text stretch file)', "(Parameter.set 'Duration_Stretch stretch)",
             "(let ((utt (eval (list 'Utterance 'Text text)))) (utt.synth utt) (utt.save.wave utt file 'riff)))"]
    for index, sentence in enumerate(sentences):
        lines.append(f'(say "{sentence}" {draw.uniform(0.8, 1.3):.2f} "{folder}/{index}.wav")')
    script = Path(folder) / 'say.scm'
    script.write_text('\n'.join(lines))
    subprocess.run(['festival', '-b', script], check=True, timeout=30, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    return [read_wave(f'{folder}/{index}.wav') for index in range(len(sentences))]


def say_tract(sentences, draw, folder):
    listed = Path(folder) / 'sentences.json'
    listed.write_text(json.dumps({'seed': draw.randrange(1 << 31), 'sentences': sentences}))
    tract.say(TRACT, listed, folder)
    return [read_wave(f'{folder}/{index}.wav') for index in range(len(sentences))]


def trimmed(sound):
    """Without the dead silence that a synthesiser puts around its words."""
    loud = np.flatnonzero(np.abs(sound.astype(np.int32)) > 150)
    return sound[max(0, loud[0] - 160) : loud[-1] + 320] if len(loud) else sound[:0]


def speak(job):
    number, plan = job
    draw = random.Random(f'{SEED} {number}')
    out = []
    with tempfile.TemporaryDirectory() as folder:
        for family, voice in (('ked', 'ked_diphone'), ('kal', 'kal_diphone'), ('rab', 'rab_diphone'), ('slt', 'cmu_us_slt_arctic_hts')):
            mine = [item for item in plan if item[2] == family]
            sounds = say_festival([item[0] for item in mine], draw, folder, voice) if mine else []
            out += [(item[1], family, trimmed(sound)) for item, sound in zip(mine, sounds)]
        mine = [item for item in plan if item[2] == 'tract']
        sounds = say_tract([item[0] for item in mine], draw, folder) if mine else []
        out += [(item[1], 'tract', trimmed(sound)) for item, sound in zip(mine, sounds)]
        mine = [item for item in plan if item[2] in mbrola.VOICES]
        spoken_by = mbrola.say(open_espeak(), mine, draw, folder) if mine else []
        out += [(phones, voice, trimmed(read_wave(path))) for phones, voice, path in spoken_by]
        for sentence, phones, family in plan:
            if family == 'espeak':
                voice, sound = say_espeak(sentence, draw)
            elif family == 'f2':
                voice, sound = say_espeak(sentence, draw, 'en+f2')
            elif family == 'flite':
                voice, sound = say_flite(sentence, draw, folder)
            elif family == 'kal16':
                voice, sound = family, say_flite(sentence, draw, folder, [('kal16', 80, 140)])[1]
            elif family.startswith('pico'):
                voice, sound = say_pico(sentence, draw, folder, 'en-GB' if family == 'pico en-GB' else 'en-US')
            elif family in RHVOICE:
                voice, sound = family, say_rhvoice(sentence, draw, family)
            else:
                continue
            out.append((phones, voice, trimmed(sound)))
    return out


def speak_to_file(job, path):
    out = speak(job)
    np.savez(path, phones=[phones for phones, _, _ in out], voices=[voice for _, voice, _ in out],
             lengths=[len(sound) for _, _, sound in out], sound=np.concatenate([sound for _, _, sound in out]))


def run_all(jobs, folder, workers, seconds):
    """Each job in a process of its own: a synthesiser that crashes or hangs costs one job, not the night."""
    begun, waiting, running = time.time(), list(enumerate(jobs)), []
    while (waiting or running) and time.time() - begun < seconds:
        while waiting and len(running) < workers:
            index, job = waiting.pop(0)
            process = Process(target=speak_to_file, args=(job, f'{folder}/{index}.part.npz'))
            process.start()
            running.append((process, index, time.time()))
        time.sleep(0.05)
        for entry in list(running):
            process, index, since = entry
            if process.is_alive() and time.time() - since > JOB_SECONDS:
                process.kill()
            if not process.is_alive():
                running.remove(entry)
                if process.exitcode == 0:
                    os.rename(f'{folder}/{index}.part.npz', f'{folder}/{index}.npz')
                else:
                    print(f'job {index} lost: exit {process.exitcode} after {time.time() - since:.0f} s', flush=True)
    for process, _, _ in running:
        process.kill()
    print(f'{len(waiting) + len(running)} of {len(jobs)} jobs not done after {time.time() - begun:.0f} s', flush=True)


def gather(folder, out, name):
    """All that was spoken, in one array, with what was said in a table beside it."""
    sounds, lines = [], []
    for path in sorted(Path(folder).glob('*.npz'), key=lambda path: path.name):
        with np.load(path) as packed:
            part = dict(packed)  # each look into the packed file would read all of it anew
        sound, ends = part['sound'], np.cumsum(part['lengths'])
        for phones, voice, end, length in zip(part['phones'], part['voices'], ends, part['lengths']):
            if 0.15 * RATE < length < 5.5 * RATE:
                sounds.append(sound[end - length : end])
                lines.append(f'{length}\t{voice}\t{phones}')
    np.save(out / f'{name}.npy', np.concatenate(sounds))
    (out / f'{name}.tsv').write_text('\n'.join(lines))
    hours = sum(map(len, sounds)) / RATE / 3600
    print(f'{name}: {len(sounds)} utterances, {hours:.1f} h', flush=True)


if __name__ == '__main__':
    parser = argparse.ArgumentParser()
    parser.add_argument('texts')
    parser.add_argument('out', type=Path)
    parser.add_argument('--jobs', type=int, default=os.cpu_count())
    parser.add_argument('--seconds', type=float, default=600)
    parser.add_argument('--limit', type=int)
    parser.add_argument('--without', nargs='*', default=(), help='families of voices to leave out')
    options = parser.parse_args()
    texts = [line.split('\t') for line in Path(options.texts).read_text().splitlines()]
    options.out.mkdir(parents=True, exist_ok=True)
    plan, check = planned(texts, options.without)
    plan, check = plan[: options.limit], check[: options.limit]
    for name, part, size, seconds in (('check', check, 60, options.seconds), ('train', plan, 200, options.seconds)):
        jobs = [(f'{name} {at}', part[at : at + size]) for at in range(0, len(part), size)]
        with tempfile.TemporaryDirectory() as folder:
            run_all(jobs, folder, options.jobs, seconds)
            gather(folder, options.out, name)
