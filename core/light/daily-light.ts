/** Conversions of light for plants. */

/**
 * Photons 400–700 nm per joule of global sunlight [µmol J⁻¹]: 0.45 × 4.48 = 2.018 (Faust & Logan 2018,
 * HortScience 53:1250); other sources give 1.9 to 2.3, so it is a parameter wherever it is used.
 */
export const photonsPerSolarJoule = 2.02;

/** Photons per joule of 400–700 nm light of sun and sky [µmol J⁻¹] (Thimijan & Heins 1983, HortScience 18:818). */
export const photonsPerParJoule = 4.57;

/** Lux for one µmol m⁻² s⁻¹ of sun and sky (Thimijan & Heins 1983). Lamps carry their own in the catalogue. */
export const sunLuxPerMicromole = 54;

/** Lux in one foot-candle: one lumen a square foot, 1 / 0.3048². */
export const luxPerFootCandle = 1 / (0.3048 * 0.3048);

/** Daily light integral [mol m⁻² d⁻¹] of a photon flux density [µmol m⁻² s⁻¹] over hours: PPFD × h × 0.0036. */
export function dailyLight(ppfd: number, hours: number): number {
  return ppfd * hours * 0.0036;
}

/** Photon flux density [µmol m⁻² s⁻¹] that gives a daily light [mol m⁻² d⁻¹] in so many hours. */
export function ppfdForDailyLight(molPerDay: number, hours: number): number {
  if (!(hours > 0)) throw new Error(`expected hours above 0, got ${hours}`);
  return molPerDay / (hours * 0.0036);
}

/** Daily light [mol m⁻² d⁻¹] of a day's global radiation [MJ m⁻² d⁻¹]. */
export function dailyLightOfRadiation(megajoules: number, photonsPerJoule = photonsPerSolarJoule): number {
  return megajoules * photonsPerJoule;
}

/** Illuminance [lux] of a photon flux density [µmol m⁻² s⁻¹] by the light's lux per micromole, and back. */
export function luxOf(ppfd: number, luxPerMicromole = sunLuxPerMicromole): number {
  return ppfd * luxPerMicromole;
}
export function ppfdOfLux(lux: number, luxPerMicromole = sunLuxPerMicromole): number {
  return lux / luxPerMicromole;
}

/** Illuminance in foot-candles of lux, and back. */
export function footCandlesOf(lux: number): number {
  return lux / luxPerFootCandle;
}
export function luxOfFootCandles(footCandles: number): number {
  return footCandles * luxPerFootCandle;
}

/** Electricity for a mole of photons [kWh mol⁻¹] by photon efficacy [µmol J⁻¹]: 1 / (3.6 × efficacy). */
export function energyPerMole(efficacy: number): number {
  return 1 / (3.6 * efficacy);
}
