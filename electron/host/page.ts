import { readFile } from 'node:fs/promises';
import { extname, join, resolve, sep } from 'node:path';

/** Nothing from elsewhere, nothing inline, no eval; pictures may be made in memory for taking out. */
export const contentSecurityPolicy = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

/** Sent with everything either shell serves. */
export const securityHeaders: Readonly<Record<string, string>> = {
  'content-security-policy': contentSecurityPolicy,
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': 'camera=(), microphone=(), geolocation=(), usb=()',
  'cache-control': 'no-store',
};

const contentTypes: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.txt': 'text/plain; charset=utf-8',
};

export interface PageFile {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly contentType: string;
}

/** The built file behind a URL path, or null where there is none inside `folder` or its kind is not served. */
export async function pageFile(folder: string, urlPath: string): Promise<PageFile | null> {
  let path: string;
  try {
    path = decodeURIComponent(urlPath);
  } catch (error) {
    if (error instanceof URIError) return null;
    throw error;
  }
  if (path.includes('\0') || path.includes('\\')) return null;
  const root = resolve(folder);
  const file = resolve(join(root, path === '/' ? 'index.html' : path));
  const contentType = contentTypes[extname(file)];
  if (!file.startsWith(root + sep) || contentType === undefined) return null;
  try {
    return { bytes: new Uint8Array(await readFile(file)), contentType };
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT' || code === 'EISDIR' || code === 'ENOTDIR') return null;
    throw error;
  }
}
