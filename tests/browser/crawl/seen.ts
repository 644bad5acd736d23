// What stands on the screen now, as numbers: every target, every text, and the three things of the glance zone.

import type { Page } from 'playwright-core';

export interface Box {
  x: number;
  y: number;
  w: number;
  h: number;
}

export interface Target extends Box {
  name: string;
  /** A jar's safety or a batch hangs on it. */
  guarded: boolean;
  /** The ground that all the vessel's own targets lie on: a touch beside them calls. */
  ground: boolean;
  /** What a touch in its middle meets is itself. */
  onTop: boolean;
}

/** One word where it stands. */
export interface Text extends Box {
  words: string;
  /** Words of one element have the same. */
  sentence: number;
  /** Font size in CSS pixels. */
  px: number;
  color: string;
  part: 'clock' | 'act' | 'which' | 'label' | 'other';
  /** Some of it lies outside the page or outside what shows it. */
  cut: boolean;
}

export interface Seen {
  page: { w: number; h: number; scrollW: number; scrollH: number };
  /** Null where no cooking screen stands. */
  glance: { parts: string[]; words: number; places: Record<string, { x: number; y: number }> } | null;
  targets: Target[];
  texts: Text[];
  /** The pictures that teach, where they stand beside the words. */
  pictures: Box[];
}

export const see = (page: Page): Promise<Seen> => page.evaluate(inPage);

function inPage(): Seen {
  const dialog = document.querySelector('dialog[open]');
  const root = dialog ?? document.body;
  const pen = document.createElement('canvas').getContext('2d');
  if (!pen) throw new Error('A page without a canvas cannot be measured.');

  /** What waits below the glass, out of reach, until it is asked for. On the glass it would be seen. */
  const waits = (element: Element) =>
    element.closest('[inert]') !== null && element.getBoundingClientRect().top >= innerHeight;

  /** Not those kept for ears only: clipped away or a pixel small. */
  const isShown = (element: Element) => {
    if (waits(element)) return false;
    for (let one: Element | null = element; one; one = one.parentElement) {
      if (getComputedStyle(one).clipPath.startsWith('inset(50%')) return false;
    }
    return element.checkVisibility({ opacityProperty: true, visibilityProperty: true });
  };

  const boxOf = (element: Element): Box => {
    const { x, y, width, height } = element.getBoundingClientRect();
    return { x, y, w: width, h: height };
  };

  /** Scrolled out of sight within a box that scrolls: it is not there until it is scrolled to. */
  const isScrolledOut = (element: Element, box: Box): boolean => {
    for (let one = element.parentElement; one && one !== document.documentElement; one = one.parentElement) {
      if (one === document.body || !/auto|scroll/.test(getComputedStyle(one).overflowY)) continue;
      const { top, bottom } = one.getBoundingClientRect();
      if (box.y + box.h <= top + 1 || box.y >= bottom - 1) return true;
    }
    return false;
  };

  /** The bars that stay while the page is scrolled under them. */
  const bars = [...root.querySelectorAll('*')]
    .filter((one) => getComputedStyle(one).position === 'sticky' && isShown(one))
    .map((bar) => ({ bar, ...boxOf(bar) }));
  /** Under such a bar: seen once the page is scrolled on. */
  const isUnderBar = (element: Element, box: Box): boolean =>
    bars.some(({ bar, y, h }) => !bar.contains(element) && box.y + box.h > y && box.y < y + h);
  const isHidden = (element: Element, box: Box) => isScrolledOut(element, box) || isUnderBar(element, box);

  /** A page longer than the glass is scrolled to it first, and back: below its edge nothing is met. */
  const isOnTop = (element: Element): boolean => {
    const { scrollX: left, scrollY: top } = window;
    const { x, y, w, h } = boxOf(element);
    const isBeyond = y + h / 2 < 0 || y + h / 2 >= innerHeight;
    if (isBeyond) scrollBy({ top: y + h / 2 - innerHeight / 2, behavior: 'instant' });
    const met = document.elementFromPoint(x + w / 2, boxOf(element).y + h / 2);
    if (isBeyond) scrollTo({ left, top, behavior: 'instant' });
    return met !== null && element.contains(met);
  };

  const targets = [...root.querySelectorAll('button, a[href], input, select, summary')]
    .filter((element) => isShown(element.closest('label') ?? element))
    .filter((element) => !isHidden(element, boxOf(element.closest('label') ?? element)))
    .map((element): Target => {
      const shown = element.closest('label') ?? element;
      return {
        name: (shown.textContent || element.getAttribute('aria-label') || element.tagName)
          .trim()
          .slice(0, 40),
        guarded: element.classList.contains('guarded'),
        ground: element.classList.contains('call'),
        onTop: isOnTop(shown),
        ...boxOf(shown),
      };
    });

  const partOf = (element: Element): Text['part'] => {
    if (element.closest('.numerals')) return 'clock';
    if (element.closest('.act')) return 'act';
    if (element.closest('.which')) return 'which';
    return element.closest('.choice-label') ? 'label' : 'other';
  };

  /** What shows of an element: every ancestor that clips. */
  const isCut = (element: Element, box: Box): boolean => {
    if (box.x < -1 || box.x + box.w > innerWidth + 1) return true;
    for (
      let one: Element | null = element;
      one && one !== document.documentElement;
      one = one.parentElement
    ) {
      const { overflowX, overflowY } = getComputedStyle(one);
      const rect = one.getBoundingClientRect();
      if (overflowX !== 'visible' && (box.x < rect.left - 1 || box.x + box.w > rect.right + 1)) return true;
      const hides = overflowY === 'hidden' || overflowY === 'clip';
      if (hides && (box.y < rect.top - 1 || box.y + box.h > rect.bottom + 1)) return true;
    }
    return false;
  };

  /** The box of the letters themselves: line boxes are set tighter than their type. */
  const inked = (rect: DOMRect, words: string, style: CSSStyleDeclaration): Box => {
    pen.font = `${style.fontStyle} ${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
    const m = pen.measureText(words);
    const scale = rect.height / (m.fontBoundingBoxAscent + m.fontBoundingBoxDescent);
    const baseline = rect.top + m.fontBoundingBoxAscent * scale;
    const top = baseline - m.actualBoundingBoxAscent * scale;
    return {
      x: rect.left,
      y: top,
      w: rect.width,
      h: (m.actualBoundingBoxAscent + m.actualBoundingBoxDescent) * scale,
    };
  };

  const texts: Text[] = [];
  let sentence = 0;
  const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) {
    const node = walker.currentNode;
    const element = node.parentElement;
    const words = (node.textContent ?? '').trim();
    if (!element || words === '' || !isShown(element) || element.closest('option, script, style')) continue;
    const style = getComputedStyle(element);
    const px = Number.parseFloat(style.fontSize);
    const ellipsis = style.textOverflow === 'ellipsis' && element.scrollWidth > element.clientWidth + 1;
    const color = element instanceof SVGElement ? style.fill : style.color;
    sentence += 1;
    for (const { 0: word, index } of (node.textContent ?? '').matchAll(/\S+/g)) {
      const range = document.createRange();
      range.setStart(node, index);
      range.setEnd(node, index + word.length);
      for (const rect of range.getClientRects()) {
        if (rect.width < 2 || rect.height < 2) continue;
        const box = inked(rect, word, style);
        if (isHidden(element, box)) continue;
        texts.push({
          words: word,
          sentence,
          px,
          color,
          part: partOf(element),
          cut: ellipsis || isCut(element, box),
          ...box,
        });
      }
    }
  }

  const zone = dialog ? null : document.querySelector('.glance');
  const glance = zone && {
    parts: [...zone.children]
      .filter((part) => isShown(part) && part.textContent)
      .map((part) => part.className),
    words: texts.length === 0 ? 0 : shownWords(zone),
    places: Object.fromEntries(
      [...zone.querySelectorAll('.which-name, .numerals, .act')].filter(isShown).map((part) => {
        const { x, y } = part.getBoundingClientRect();
        return [part.classList[0] ?? '', { x: x + scrollX, y: y + scrollY }];
      }),
    ),
  };

  function shownWords(element: Element): number {
    const words = document.createTreeWalker(element, NodeFilter.SHOW_TEXT);
    let count = 0;
    while (words.nextNode()) {
      const parent = words.currentNode.parentElement;
      if (parent && isShown(parent))
        count += (words.currentNode.textContent ?? '').trim().split(/\s+/).filter(Boolean).length;
    }
    return count;
  }

  const pictures = [...root.querySelectorAll('.stage-sight svg, .sight-chip svg')].filter(isShown).map(boxOf);

  const { scrollWidth: scrollW, scrollHeight: scrollH } = document.documentElement;
  return { page: { w: innerWidth, h: innerHeight, scrollW, scrollH }, glance, targets, texts, pictures };
}
