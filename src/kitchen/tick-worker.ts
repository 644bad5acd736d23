// A worker that does nothing but tick.

self.addEventListener('message', ({ data: everyMs }: MessageEvent<number>) => {
  setInterval(() => self.postMessage(null), everyMs);
});
