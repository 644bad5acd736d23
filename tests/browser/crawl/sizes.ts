// The screens a kitchen has: their size in CSS pixels and, because thumbs and eyes are measured in millimetres, how large a pixel is on the glass.

export interface Device {
  name: string;
  width: number;
  height: number;
  /** CSS pixels to a millimetre of glass. */
  pxPerMm: number;
  /** Font size, px, at which capitals of 0.70 em subtend 24 minutes of arc at two metres. */
  leastBigPx: number;
  /** Worked by a thumb; a desktop has a mouse and keys. */
  thumb: boolean;
  /** Stands by itself, so that a hand can come to it from below or from the side; a phone lies in the hand. */
  propped: boolean;
}

/**
 * 24 minutes of arc at 2 m are 13.96 mm of capital, 19.95 mm of type: 121 px of it on a phone make 6.06 px to the
 * millimetre (154 to the inch), 103 px on a tablet 5.16 (131 to the inch). A desktop screen has 96 to the inch
 * (CSS's own reference pixel); it is held to the tablet's 103 px all the same.
 */
const PHONE = { pxPerMm: 121 / 19.95, leastBigPx: 121, thumb: true, propped: false };
const TABLET = { pxPerMm: 103 / 19.95, leastBigPx: 103, thumb: true, propped: true };
const DESKTOP = { pxPerMm: 96 / 25.4, leastBigPx: 103, thumb: false, propped: true };

export const DEVICES: readonly Device[] = [
  { name: 'phone', width: 390, height: 844, ...PHONE },
  { name: 'phone on its side', width: 844, height: 390, ...PHONE },
  { name: 'tablet', width: 820, height: 1180, ...TABLET },
  { name: 'tablet on its side', width: 1180, height: 820, ...TABLET },
  { name: 'desktop', width: 1440, height: 900, ...DESKTOP },
  // The lowest of both kinds that are still in many kitchens: chosen by hand, no source.
  { name: 'tablet on its side, small', width: 1024, height: 768, ...TABLET },
  { name: 'laptop', width: 1366, height: 768, ...DESKTOP },
];

export type Theme = 'dark' | 'bright';
export type Hand = 'right' | 'left';

/** One way of looking at a screen. */
export interface Look {
  device: Device;
  theme: Theme;
  /** Per cent of the browser's own text size. */
  text: 100 | 200;
  hand: Hand;
}

export function looksOf(
  devices: readonly Device[],
  themes: readonly Theme[],
  texts: readonly Look['text'][],
  hands: readonly Hand[],
): Look[] {
  return hands.flatMap((hand) =>
    devices.flatMap((device) =>
      texts.flatMap((text) => themes.map((theme) => ({ device, theme, text, hand }))),
    ),
  );
}

export const sayLook = ({ device, theme, text, hand }: Look): string =>
  `${device.name}, ${theme}, ${text} %${hand === 'left' ? ', left hand' : ''}`;
