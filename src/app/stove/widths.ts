// How wide a word is in the big type, so that it can be chosen by whether it fits instead of being shrunk.

/** Advance widths of Sofia Sans Extra Condensed at weight 650, thousandths of an em, measured in Chromium. */
const ADVANCE: Record<string, number> = Object.fromEntries(
  [
    'a342 b361 c349 d361 e354 f262 g351 h368 i174 j165 k351 l174 m545 n368 o361 p359 q361 r266 s321 t280 u362 v349 w502 x350 y347 z322',
    'A393 B394 C423 D427 E358 F349 G433 H439 I187 J187 K405 L326 M524 N440 O429 P375 Q429 R404 S368 T356 U430 V405 W574 X383 Y384 Z361',
    '0393 1324 2358 3367 4386 5361 6389 7356 8388 9390 :192 .196 ,207 ?328 !194 –472 -312 ’200',
  ]
    .join(' ')
    .split(' ')
    .map((entry) => [entry.charAt(0), Number(entry.slice(1)) / 1000]),
);
export const SPACE_EM = 0.125;
/** A letter that was not measured, or a sign, is taken to be as wide as the widest. */
const WIDEST_EM = 0.58;
/** What stands over a letter, apart from it. */
const ACCENTS = /[\u0300-\u036F]/g;
/** An accented letter is as wide as the bare one, a sign that opens a question as the one that ends it. */
const bare = (text: string): string => text.normalize('NFD').replace(ACCENTS, '').replaceAll('¿', '?');

export function widthEm(text: string): number {
  return [...bare(text)].reduce(
    (sum, letter) => sum + (letter === ' ' ? SPACE_EM : (ADVANCE[letter] ?? WIDEST_EM)),
    0,
  );
}
