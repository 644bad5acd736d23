// What is the cook told when storage gives trouble? Plain sentences: what is the matter, what to do.

import type { StoreTrouble } from '../kitchen/ports.ts';

type Kind = StoreTrouble['kind'];

const trouble = (kind: Kind, says: string): StoreTrouble => ({ kind, says });

const entries = (n: number) => (n === 1 ? 'the first entry' : `the first ${n} entries`);

/** One of the two copies cannot be written; the other one still is. */
const oneCopy: Record<Kind, string> = {
  full: 'is full. Free some space on this device.',
  refused: 'is not open to this page.',
  corrupt: 'is damaged.',
  evicted: 'was emptied by the browser.',
  'older-version': 'is of another version.',
  readonly: 'is held by another tab.',
};

export const sentences = {
  oneCopyLeft: (kind: Kind, where: string) =>
    trouble(
      kind,
      `Only one of the two copies of the kitchen’s log is being kept: ${where} ${oneCopy[kind]} Nothing is lost.`,
    ),

  nothingSaved: (kind: Kind) =>
    trouble(
      kind,
      kind === 'full'
        ? 'Nothing more can be saved: this device is full. Go on cooking and keep this page open; free some space, or save the kitchen’s log as a file now.'
        : kind === 'readonly'
          ? 'Another tab is cooking in this kitchen. This tab saves nothing; go on in the other one, or take over here.'
          : 'Nothing can be saved in this browser. Go on cooking and keep this page open; save the kitchen’s log as a file before you close it.',
    ),

  rebuiltEmpty: (where: string) =>
    trouble(
      'evicted',
      `The browser had emptied one of the two copies of the kitchen’s log, ${where}. It was made again from the other; nothing is lost.`,
    ),

  rebuiltDamaged: (where: string) =>
    trouble(
      'corrupt',
      `One of the two copies of the kitchen’s log, ${where}, was damaged. It was mended from the other; what stood there is kept aside.`,
    ),

  cutShort: (kept: number) =>
    trouble(
      'corrupt',
      kept === 0
        ? 'The kitchen’s log is damaged and cannot be read. It is kept aside untouched; the kitchen starts empty. Look at your pots and clocks yourself.'
        : `The kitchen’s log is damaged after ${entries(kept)}. What could not be read is kept aside untouched. Check on every pot and canner before you go on.`,
    ),

  gone: (known: number, found: number) =>
    trouble(
      'evicted',
      `The browser has thrown away part of the kitchen’s log: ${known} entries were saved, ${found} are left. If you kept the log as a file, open it now.`,
    ),

  otherVersion: (version: number) =>
    trouble(
      'older-version',
      version > 0
        ? `The kitchen’s log was written by another version (${version}) that cannot be read here. It is kept aside untouched; the kitchen starts empty.`
        : 'What was found in place of the kitchen’s log is of an unknown kind. It is kept aside untouched; the kitchen starts empty.',
    ),

  migrated: (from: number, to: number) =>
    trouble(
      'older-version',
      `The kitchen’s log was brought from version ${from} to version ${to}. The old one is kept aside untouched.`,
    ),

  notALog: () =>
    trouble(
      'corrupt',
      'This file is not a kitchen log, or its first line is damaged. Nothing was changed; choose another file.',
    ),

  fileOfOtherVersion: (version: number) =>
    trouble(
      'older-version',
      `This file was written by another version (${version}) that cannot be read here. Nothing was changed.`,
    ),

  otherKitchen: (theirs: string, ours: string) =>
    trouble(
      'refused',
      `This file is the log of the kitchen “${theirs}”, not of “${ours}”. Nothing was changed; open it in its own kitchen.`,
    ),

  fileCutShort: (kept: number) =>
    trouble(
      'corrupt',
      `This file is damaged after ${entries(kept)}. Those were read; check on every pot and canner before you go on.`,
    ),

  mirroring: () =>
    trouble('readonly', 'This tab only looks on; another one is cooking. Take over here to change anything.'),
};

/** What an error of the browser's storage means. */
export function kindOf(error: unknown): Kind {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  switch (name) {
    case 'QuotaExceededError':
      return 'full';
    case 'NoModificationAllowedError':
    case 'ConstraintError':
      return 'readonly';
    case 'CopyGone':
    case 'NotFoundError':
      return 'evicted';
    case 'DataError':
    case 'UnknownError':
      return 'corrupt';
    default:
      return 'refused';
  }
}
