// The log in memory, with a place for one snapshot that is kept as text, as the durable log keeps it.

import { MemoryLog } from './memory.ts';

export class SnapshotLog extends MemoryLog {
  snapshot: { seq: number; data: unknown } | null = null;

  async readSnapshot() {
    return this.snapshot;
  }

  async writeSnapshot(seq: number, data: unknown) {
    this.snapshot = { seq, data: JSON.parse(JSON.stringify(data)) };
  }
}
