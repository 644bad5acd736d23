// A sentence of the catalogue set inside a line: it begins small.

export function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
