// Which file of the built page does a request ask for, if it may have one at all?

import { realpath, stat } from 'node:fs/promises';
import { extname, join, resolve, sep } from 'node:path';

export interface Located {
  file: string;
  /** The decoded path of the address, as the caching rules see it. */
  urlPath: string;
  bytes: number;
  etag: string;
}

/** The file for a request path, or null when there is none or it lies outside the page's folder. */
export async function locate(folder: string, requestUrl: string): Promise<Located | null> {
  const urlPath = decodePath(requestUrl);
  if (urlPath === null) return null;
  const root = await realpath(folder);
  const asked = resolve(root, `.${urlPath}`);
  if (!isInside(root, asked)) return null;
  return (await readable(root, asked, urlPath)) ?? (await screenFor(root, urlPath));
}

/** An address of the page's own making ("/plan") has no file: it opens the page, which knows what to show. */
async function screenFor(root: string, urlPath: string): Promise<Located | null> {
  if (urlPath !== '/' && extname(urlPath) !== '') return null;
  return readable(root, join(root, 'index.html'), '/');
}

async function readable(root: string, path: string, urlPath: string): Promise<Located | null> {
  try {
    const file = await realpath(path); // a symbolic link may point anywhere: judge where it leads
    const info = await stat(file);
    if (!info.isFile() || !isInside(root, file)) return null;
    const etag = `"${info.size.toString(36)}-${Math.floor(info.mtimeMs).toString(36)}"`;
    return { file, urlPath, bytes: info.size, etag };
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code === 'ENOENT' || code === 'ENOTDIR' || code === 'ENAMETOOLONG') return null;
    throw error;
  }
}

/** The path of an address without query; null for what cannot be decoded, holds a NUL or names a hidden file. */
function decodePath(requestUrl: string): string | null {
  try {
    const path = decodeURIComponent(requestUrl.split(/[?#]/, 1)[0] ?? '');
    const hidden = path.split(/[/\\]/).some((part) => part.startsWith('.'));
    return path.startsWith('/') && !path.includes('\0') && !path.includes('\\') && !hidden ? path : null;
  } catch {
    return null;
  }
}

function isInside(root: string, path: string): boolean {
  return path === root || path.startsWith(root + sep);
}
