export { dailyCost, heatPrice, spanHours } from './tariff.ts';
export type { Fuel } from './tariff.ts';
