/** The interface's own scheme: a real origin for the content security policy, unlike file addresses. */
export const scheme = 'winterbench';
export const pageOrigin = `${scheme}://app`;
/** The one channel between preload and main. */
export const callChannel = 'winterbench:call';

/** True for the interface's own pages; `devServer` is the address of Vite's server while developing, else null. */
export function isOwnPage(address: string, devServer: string | null): boolean {
  if (!URL.canParse(address)) return false;
  const url = new URL(address);
  if (url.protocol === `${scheme}:` && url.host === 'app') return true;
  return devServer !== null && url.origin === new URL(devServer).origin;
}
