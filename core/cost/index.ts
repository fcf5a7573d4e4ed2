export { dailyCost, heatPrice, spanHours, spanMinutes } from './tariff.ts';
export type { Fuel } from './tariff.ts';
