// The worker that owns the log file: does one request after another and answers each.

import { FileLines } from './file-lines.ts';
import type { FileAnswer, FileRequest } from './file-messages.ts';
import { OpfsDisk } from './opfs-disk.ts';

let lines: FileLines | null = null;
let turn: Promise<void> = Promise.resolve();

async function answer({ id, kitchen, call }: FileRequest): Promise<FileAnswer> {
  lines ??= new FileLines(new OpfsDisk(kitchen));
  try {
    return { id, ok: true, value: await perform(lines, call) };
  } catch (error) {
    const { name, message } = error instanceof Error ? error : new Error(String(error));
    return { id, ok: false, name, message };
  }
}

function perform(file: FileLines, call: FileRequest['call']): Promise<unknown> {
  switch (call.do) {
    case 'read':
      return file.bytes();
    case 'append':
      return file.append(call.from, call.lines);
    case 'rewrite':
      return file.rewrite(call.from, call.lines);
    case 'setAside':
      return file.setAside(call.name);
    case 'kept':
      return file.kept();
    case 'readNote':
      return file.readNote(call.key);
    case 'writeNote':
      return file.writeNote(call.key, call.text);
    case 'close':
      return file.close();
  }
}

self.addEventListener('message', ({ data }: MessageEvent<FileRequest>) => {
  turn = turn.then(async () => self.postMessage(await answer(data)));
});
