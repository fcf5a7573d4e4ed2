import { fileURLToPath } from 'node:url';

/** The project's root folder, with a separator at its end. */
export const projectRoot = fileURLToPath(new URL('../../', import.meta.url));
/** Where `npm run build` puts main, preload and renderer. */
export const outFolder = fileURLToPath(new URL('../../out/', import.meta.url));
