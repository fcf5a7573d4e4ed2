import { protocol } from 'electron';
import { pageFile, securityHeaders } from '../host/page.ts';
import { pageOrigin, scheme } from './origin.ts';

/** Must run before the app is ready. */
export function registerScheme(): void {
  protocol.registerSchemesAsPrivileged([
    { scheme, privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
}

/** Serves the built interface under its own scheme, with the same headers as the loopback shell. */
export function servePages(rendererFolder: string): void {
  protocol.handle(scheme, async (request) => {
    const url = new URL(request.url);
    const file =
      request.method === 'GET' && url.host === new URL(pageOrigin).host
        ? await pageFile(rendererFolder, url.pathname)
        : null;
    if (file === null)
      return new Response('There is nothing at this address.', { status: 404, headers: securityHeaders });
    return new Response(file.bytes, { headers: { ...securityHeaders, 'content-type': file.contentType } });
  });
}
