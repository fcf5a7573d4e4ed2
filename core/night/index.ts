export { runNight } from './night.ts';
export type * from './result.ts';
