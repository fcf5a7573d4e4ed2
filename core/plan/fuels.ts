/**
 * Heat of combustion, net (vapour leaves as vapour) [kWh]: propane 12.88 kWh kg⁻¹ (46.35 MJ kg⁻¹);
 * paraffin 9.6 kWh l⁻¹ (43.1 MJ kg⁻¹ at 0.80 kg l⁻¹). Standard heats of formation, derived; from memory.
 */
export const propaneHeat = 12.88;
export const paraffinHeat = 9.6;

/** Water vapour per joule of heat [kg J⁻¹]: propane 127 g, paraffin 112 g a net kWh (stoichiometry, derived). */
export const propaneVapour = 0.127 / 3.6e6;
export const paraffinVapour = 0.112 / 3.6e6;

/** Carbon dioxide per joule of heat [kg J⁻¹]: propane 233 g, paraffin 253 g a net kWh (stoichiometry, derived). */
export const propaneCarbonDioxide = 0.233 / 3.6e6;
export const paraffinCarbonDioxide = 0.253 / 3.6e6;

/** Share of the net heat of a flued heater that stays inside (common practice, no source: 0.75–0.9). */
export const fluedEfficiency = 0.85;
