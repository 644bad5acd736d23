// A thumb inside the real page: looks at a pot, opens "More", presses the button of a choice, fills in what its
// sheet asks. Also hears what the page acknowledges to other tabs. Sent to the page as text: no imports.

import type { LogEntry } from '../../../src/kitchen/ports.ts';

export interface Press {
  /** The name on the rail, as the page writes it. */
  who: string;
  /** The words on the button. */
  label: string;
  full?: number;
  spare?: number;
  count?: number;
  keptBoiling?: boolean;
  massKg?: number;
}

export interface Heard {
  entries: LogEntry[];
  states: string;
  now: number;
}

export interface Thumb {
  press(press: Press): Promise<string | null>;
  start(): Promise<string | null>;
  planAnother(label: string): Promise<string | null>;
  heard(): Heard;
  /** Resolves after so many entries more, or when nothing more came for a while. */
  until(entries: number, withinMs: number): Promise<Heard>;
}

declare global {
  var thumb: Thumb;
}

export function inPage(): void {
  const entries: LogEntry[] = [];
  new BroadcastChannel('stovehand-practice').addEventListener('message', ({ data }) => {
    if (data.kind === 'entry') entries.push(data.entry);
  });
  /** A touch is painted first, then thought about, then drawn. */
  const drawn = () =>
    new Promise<void>((resolve) => requestAnimationFrame(() => setTimeout(() => setTimeout(resolve, 10))));
  const all = (selector: string, within: ParentNode = document) => [
    ...within.querySelectorAll<HTMLElement>(selector),
  ];
  const sheet = () =>
    document.querySelector<HTMLDialogElement>('dialog:is([open], [data-early], [data-away])');

  /** A guarded button wants a second press, as from a screen reader or a key. */
  async function press(button: HTMLElement): Promise<void> {
    button.click();
    if (button.classList.contains('guarded')) button.click();
    await drawn();
  }

  async function more(): Promise<boolean> {
    sheet()?.querySelector<HTMLElement>('header button')?.click();
    await drawn();
    document.querySelector<HTMLElement>('.talk-row button[aria-haspopup=dialog]')?.click();
    // The sheet shows its head first, and then what can be done.
    for (let tries = 0; tries < 200 && !sheet()?.querySelector('.choice-list'); tries++)
      await new Promise((resolve) => setTimeout(resolve, 10));
    return sheet() !== null;
  }

  async function patiently(stands: () => boolean): Promise<void> {
    for (let tries = 0; tries < 200 && !stands(); tries++)
      await new Promise((resolve) => setTimeout(resolve, 10));
  }

  /** What the pots are called now: a second one of a fruit makes the first another. */
  const names = () =>
    (document.documentElement.dataset['kitchen'] ?? '')
      .split('; ')
      .map((one) => one.slice(0, one.lastIndexOf(': ')))
      .filter((name) => name !== 'canner');

  /** All is drawn in slices, and the row of pots last: a thumb sees its pot before it presses it, and whom it looks at before it presses on. */
  async function lookAt(who: string): Promise<void> {
    const plate = (name: string) => all('.plate-on-stove').find((one) => one.dataset['name'] === name);
    await patiently(() => names().length < 2 || names().every(plate));
    plate(who)?.click();
    await drawn();
    await patiently(() => !plate(who) || plate(who)?.ariaCurrent === 'true');
  }

  async function setTo(stepper: HTMLElement | undefined, wanted: number): Promise<void> {
    if (!stepper) return;
    const value = () => Number(stepper.querySelector('output')?.textContent);
    const [less, onemore] = all('button', stepper);
    for (let tries = 0; tries < 99 && value() !== wanted; tries++) {
      (value() > wanted ? less : onemore)?.click();
      await drawn();
    }
  }

  function type(field: HTMLInputElement, text: string): void {
    const { set } = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value') ?? {};
    set?.call(field, text);
    field.dispatchEvent(new Event('input', { bubbles: true }));
  }

  /** What the sheet of a choice asks. */
  async function answer({ full, spare, count, keptBoiling, massKg }: Press): Promise<void> {
    const asked = sheet();
    if (!asked) return;
    const [first, second] = all('.stepper', asked);
    if (full !== undefined) await setTo(first, full);
    if (spare !== undefined) await setTo(second, spare);
    if (count !== undefined && first) await setTo(first, count);
    const field = asked.querySelector<HTMLInputElement>('input[inputmode=decimal]');
    if (field && massKg !== undefined) type(field, String(massKg));
    await drawn();
    const buttons = all('.sheet-body > button, form > button, .choice-list button', asked);
    const wanted =
      keptBoiling === true ? buttons.find((one) => one.classList.contains('guarded')) : undefined;
    const last = buttons.find((one) => one.classList.contains('main')) ?? buttons[0];
    const button = wanted ?? last;
    if (button) await press(button);
  }

  globalThis.thumb = {
    async press(wanted) {
      await lookAt(wanted.who);
      if (!(await more())) return 'there is no More';
      const choices = all('.choice-list button', sheet() ?? document);
      const button = choices.find((one) => one.querySelector('.choice-label')?.textContent === wanted.label);
      if (!button) {
        const offered = choices.map((one) => one.querySelector('.choice-label')?.textContent).join(', ');
        return `the page offers no "${wanted.label}" at ${wanted.who}, but: ${offered}`;
      }
      await press(button);
      await answer(wanted);
      return sheet() ? `a sheet is still open: ${sheet()?.textContent?.slice(0, 200)}` : null;
    },
    async start() {
      const button = document.querySelector<HTMLElement>('.start-bar button.main');
      if (!button) return 'there is no Start';
      button.click();
      await drawn();
      return null;
    },
    async planAnother(label) {
      if (!(await more())) return 'there is no More';
      const button = all('.ways button', sheet() ?? document).find((one) => one.textContent === label);
      button?.click();
      await drawn();
      return button ? null : `there is no "${label}"`;
    },
    heard: () => ({
      entries: entries.splice(0),
      states: document.documentElement.dataset['kitchen'] ?? '',
      now: Number(document.documentElement.dataset['now']),
    }),
    async until(wanted, withinMs) {
      for (let waited = 0; waited < withinMs && entries.length < wanted; waited += 5)
        await new Promise((resolve) => setTimeout(resolve, 5));
      return this.heard();
    },
  };
}
