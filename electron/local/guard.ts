import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';

/** What a request is let in for, or why not. */
export type Entry =
  | { readonly let: 'in' }
  /** The start token was traded: the cookie goes with the answer. */
  | { readonly let: 'in-with-cookie'; readonly cookie: string }
  | { readonly let: 'out'; readonly status: 401 | 403; readonly message: string };

interface Knock {
  readonly method: string;
  readonly host: string | undefined;
  readonly origin: string | undefined;
  readonly cookies: string | undefined;
  /** The start token, where the address carries one. */
  readonly token: string | null;
}

const secret = () => randomBytes(32).toString('base64url');

/**
 * Decides who may speak to the loopback server. The printed address carries a token that is good once: it is
 * traded for a cookie (a page's own assets cannot send a header) whose name carries the port, since cookies
 * do not tell ports of one host apart. The Host check stops DNS rebinding, the Origin check other pages.
 */
export function createGuard(port: number) {
  const authority = `127.0.0.1:${port}`;
  const origin = `http://${authority}`;
  const cookieName = `winterbench-${port}`;
  const session = secret();
  const unused = new Set<string>();

  function admit(knock: Knock): Entry {
    if (knock.host !== authority) return out(403, 'This address is not served here.');
    const writes = knock.method !== 'GET';
    if (knock.origin !== undefined ? knock.origin !== origin : writes)
      return out(403, 'Not from another page.');
    if (hasCookie(knock.cookies, cookieName, session)) return { let: 'in' };
    if (knock.token === null || writes)
      return out(401, 'Open the address that Winterbench printed when it started.');
    for (const token of unused) {
      if (!same(token, knock.token)) continue;
      unused.delete(token);
      return { let: 'in-with-cookie', cookie: `${cookieName}=${session}; HttpOnly; SameSite=Strict; Path=/` };
    }
    return out(403, 'This address is no longer good: it opens once. Start Winterbench again for a new one.');
  }

  /** A fresh address that opens once. */
  function address(): string {
    const token = secret();
    unused.add(token);
    return `${origin}/?token=${token}`;
  }

  return { admit, address };
}

const out = (status: 401 | 403, message: string): Entry => ({ let: 'out', status, message });

function hasCookie(header: string | undefined, name: string, value: string): boolean {
  const pairs = (header ?? '').split(';').map((pair) => pair.trim());
  return pairs.some((pair) => pair.startsWith(`${name}=`) && same(pair.slice(name.length + 1), value));
}

/** Compares in constant time, whatever the lengths. */
function same(one: string, other: string): boolean {
  const hash = (text: string) => createHash('sha256').update(text).digest();
  return timingSafeEqual(hash(one), hash(other));
}
