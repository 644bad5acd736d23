// Hands a file to the cook to keep.

export function offerFile(file: Blob, name = 'stovehand-log.txt'): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  // The download has begun long before that; the memory is given back.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
