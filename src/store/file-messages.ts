// What do the page and the worker that owns the log file say to each other?

export type FileCall =
  | { do: 'read' }
  | { do: 'append'; from: number; lines: readonly string[] }
  | { do: 'rewrite'; from: number; lines: readonly string[] }
  | { do: 'setAside'; name: string }
  | { do: 'kept' }
  | { do: 'readNote'; key: string }
  | { do: 'writeNote'; key: string; text: string }
  | { do: 'close' };

export interface FileRequest {
  id: number;
  kitchen: string;
  call: FileCall;
}

export type FileAnswer =
  { id: number; ok: true; value: unknown } | { id: number; ok: false; name: string; message: string };
