// Which files the house holds, and what each of them imports.

import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { parseSync } from 'vite';

export const ROOT = join(import.meta.dirname, '..', '..');

/** Every file that is tracked or about to be, by its path from the top. */
export function houseFiles(): string[] {
  const listed = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard', '-z'], {
    cwd: ROOT,
  });
  const gone = execFileSync('git', ['ls-files', '--deleted', '-z'], { cwd: ROOT });
  const names = (buffer: Buffer) => buffer.toString('utf8').split('\0').filter(Boolean);
  const deleted = new Set(names(gone));
  return [...new Set(names(listed))].filter((path) => !deleted.has(path)).sort();
}

export const read = (path: string) => readFileSync(join(ROOT, path), 'utf8');

/**
 * What a module imports, statically, dynamically with a fixed name, or through `new URL('./x', import.meta.url)`
 * as workers are; paths from the top for files of the house, names for packages.
 */
export function importsOf(path: string, source: string): string[] {
  const parsed = parseSync(path, source);
  if (parsed.errors.length > 0) throw new Error(`${path} cannot be read: ${parsed.errors[0]?.message}`);
  const { staticImports, staticExports, dynamicImports } = parsed.module;
  const specifiers = [
    ...staticImports.map((entry) => entry.moduleRequest.value),
    ...staticExports.flatMap((entry) =>
      entry.entries.flatMap(({ moduleRequest }) => moduleRequest?.value ?? []),
    ),
    ...dynamicImports.map(({ moduleRequest }) =>
      fixedName(source.slice(moduleRequest.start, moduleRequest.end)),
    ),
    ...[...source.matchAll(/new URL\(\s*['"](\.[^'"]+)['"],\s*import\.meta\.url/g)].map(
      (match) => match[1] ?? '',
    ),
  ];
  return [...new Set(specifiers.map((name) => resolveFrom(path, name.replace(/\?.*$/, ''))))];
}

/** The text of a string literal; an import whose name is made up at run time cannot be judged and is an error. */
function fixedName(literal: string): string {
  const match = /^(['"`])([^$]*)\1$/.exec(literal);
  if (!match?.[2]) throw new Error(`An import of ${literal} hides what it imports.`);
  return match[2];
}

function resolveFrom(path: string, name: string): string {
  return name.startsWith('.') ? normalize(join(dirname(path), name)).replaceAll('\\', '/') : name;
}
