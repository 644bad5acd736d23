// A pot's name where there is little room: all of it if it fits, else its shorter ways, and only at last its first letters.

import { ordinals } from '../../kitchen/naming.ts';
import { widthEm } from './widths.ts';

/** The longest way of a name that fits into so many em of the big type. */
export function nameWithin(name: string, roomEm: number): string {
  const ways = [name, numbered(name), plainer(numbered(name)), firstWord(numbered(name))];
  const fits = ways.find((way) => widthEm(capital(way)) <= roomEm);
  return fits ?? cut(ways.at(-1) ?? name, roomEm);
}

/** "second plum" is plum 2. */
function numbered(name: string): string {
  const [first = '', ...rest] = name.split(' ');
  const number = ordinals.indexOf(first) + 1;
  return number > 0 && rest.length > 0 ? `${rest.join(' ')} ${number}` : name;
}

/** "white peach or nectarine 2" is white peach 2. */
const plainer = (name: string): string => name.replace(/ (or|with) \D*\b/, ' ').trim();

/** With its number, if it has one. */
function firstWord(name: string): string {
  const number = /\d+$/.exec(name)?.[0];
  const [first = name] = name.split(' ');
  return number ? `${first} ${number}` : first;
}

const capital = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);

/** Like on a jar's lid: with a full stop, its number behind it. */
function cut(name: string, roomEm: number): string {
  const [word = name, number] = name.split(' ');
  for (let letters = word.length - 1; letters > 1; letters--) {
    const short = `${word.slice(0, letters)}.${number ? ` ${number}` : ''}`;
    if (widthEm(capital(short)) <= roomEm) return short;
  }
  return name;
}
