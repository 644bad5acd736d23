// One tab cooks, the others look on; never two, and never none for long.

import { describe, expect, test } from 'vitest';
import type { LogEntry } from '../../src/kitchen/ports.ts';
import { type Lead, lead } from '../../src/store/lead.ts';
import { entryOf } from './evening.ts';
import { atRest, Browser } from './tabs.ts';

function kitchenTab(browser: Browser) {
  const { tabs, ...fate } = browser.tab();
  const heard: LogEntry[] = [];
  const roles: string[] = [];
  const here: Lead = lead('test', tabs);
  here.onEntry((entry) => heard.push(entry));
  here.onRole((role) => void roles.push(role));
  return { lead: here, heard, roles, ...fate };
}

async function threeTabs() {
  const browser = new Browser();
  const tabs = [kitchenTab(browser), kitchenTab(browser), kitchenTab(browser)] as const;
  await atRest();
  return tabs;
}

const roles = (tabs: readonly { lead: Lead }[]) => tabs.map((tab) => tab.lead.role);

describe('the tabs of one kitchen', () => {
  test('the first one leads, and each knows its role', async () => {
    const tabs = await threeTabs();
    expect(await Promise.all(tabs.map((tab) => tab.lead.settled))).toEqual([
      'leading',
      'mirroring',
      'mirroring',
    ]);
    expect(roles(tabs)).toEqual(['leading', 'mirroring', 'mirroring']);
  });

  test('mirrors hear every acknowledged entry in order', async () => {
    const [first, second, third] = await threeTabs();
    first.lead.post(entryOf(1));
    first.lead.post(entryOf(2));
    await atRest();
    expect(second.heard).toEqual([entryOf(1), entryOf(2)]);
    expect(third.heard).toEqual(second.heard);
    expect(first.heard).toEqual([]);
  });

  test('a mirror tells nobody anything', async () => {
    const [first, second, third] = await threeTabs();
    second.lead.post(entryOf(1));
    await atRest();
    expect([...first.heard, ...third.heard]).toEqual([]);
  });

  test('when the leading one dies, the next one leads', async () => {
    const [first, second, third] = await threeTabs();
    first.die();
    await atRest();
    expect(roles([second, third])).toEqual(['leading', 'mirroring']);
  });

  test('when the leading one leaves, it is silent before the next one leads', async () => {
    const [first, second] = await threeTabs();
    const order: string[] = [];
    first.lead.onRole((role) => void order.push(`first ${role}`));
    second.lead.onRole((role) => void order.push(`second ${role}`));
    await first.lead.leave();
    await atRest();
    expect(order).toEqual(['first mirroring', 'second leading']);
  });
});

describe('taking over', () => {
  test('goes to the tab that asked, not to the one that waited longer', async () => {
    const tabs = await threeTabs();
    await tabs[2].lead.takeOver();
    await atRest();
    expect(roles(tabs)).toEqual(['mirroring', 'mirroring', 'leading']);
    expect(tabs[1].roles).toEqual([]);
  });

  test('waits until the other has finished writing', async () => {
    const browser = new Browser();
    const { tabs } = browser.tab();
    let written = () => {};
    const slow = lead('test', tabs);
    slow.onRole((role) => (role === 'mirroring' ? new Promise((resolve) => (written = resolve)) : undefined));
    await slow.settled;
    const patient = browser.tab();
    const never = () => new Promise<void>(() => {});
    const taker = lead('test', { ...patient.tabs, pause: never });
    await taker.settled;
    const taken = taker.takeOver();
    await atRest();
    expect([slow.role, taker.role]).toEqual(['mirroring', 'mirroring']);
    written();
    await taken;
    expect([slow.role, taker.role]).toEqual(['mirroring', 'leading']);
  });

  test('takes the lead from a frozen tab, which finds itself a mirror when it thaws', async () => {
    const [first, second] = await threeTabs();
    first.freeze();
    await second.lead.takeOver();
    first.thaw();
    await atRest();
    expect(roles([first, second])).toEqual(['mirroring', 'leading']);
    expect(first.roles.at(-1)).toBe('mirroring');
  });

  test('back and forth works as often as one likes', async () => {
    const tabs = await threeTabs();
    for (const i of [1, 0, 2, 1, 0] as const) {
      await tabs[i].lead.takeOver();
      await atRest();
      expect(roles(tabs).map((role) => role === 'leading')).toEqual([0, 1, 2].map((n) => n === i));
    }
  });

  test('and dying: the one that gave up its lead gets it back', async () => {
    const [first, second, third] = await threeTabs();
    third.die();
    await second.lead.takeOver();
    await atRest();
    second.die();
    await atRest();
    expect(first.lead.role).toBe('leading');
  });

  test('by the one that leads already changes nothing', async () => {
    const tabs = await threeTabs();
    await tabs[0].lead.takeOver();
    expect(roles(tabs)).toEqual(['leading', 'mirroring', 'mirroring']);
  });
});

test('what another version of the page says over the channel is not listened to', async () => {
  const browser = new Browser();
  const tab = kitchenTab(browser);
  const stranger = browser.tab().tabs.channel('');
  for (const data of [null, 'x', { kind: 'entry', entry: { seq: 0 } }, { kind: 'shout' }])
    stranger.postMessage(data);
  await atRest();
  expect(tab.heard).toEqual([]);
  expect(tab.lead.role).toBe('leading');
});
