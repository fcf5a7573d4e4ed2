export { dailyCost, heatPrice, paraffinHeat, paraffinVapour, propaneHeat, propaneVapour, spanHours } from './tariff.ts';
export type { Fuel } from './tariff.ts';
