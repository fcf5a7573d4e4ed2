/**
 * Build-ups of ASHRAE Standard 140-2020, section 7 (cases 195 to 960), as a plan lists them: inside to outside.
 * Thicknesses and conductivities as the check pages of the design give them; densities and specific heats of
 * boards and timber from memory of the standard.
 */
import type { Place } from '../../../core/index.ts';

type Listed = Extract<Place['shape'], { kind: 'listed' }>['surfaces'][number];
export type Build = NonNullable<Listed['build']>;
export type Layer = Extract<Build, { kind: 'layers' }>['layers'][number];

/** The four numbers a layer has in the plan [m, W m⁻¹ K⁻¹, kg m⁻³, J kg⁻¹ K⁻¹]. */
const layer = (thickness: number, conductivity: number, density = 0, specificHeat = 0): Layer => ({
  thickness,
  conductivity,
  density,
  specificHeat,
});

const siding = layer(0.009, 0.14, 530, 900);
const roofDeck = layer(0.019, 0.14, 530, 900);
const plasterboard = (thickness: number) => layer(thickness, 0.16, 950, 840);
const fibreglass = (thickness: number) => layer(thickness, 0.04, 12, 840);

/** Resistance of a 12 mm gap of air between panes of emissivity 0.84, gap at 5 °C: 1/(0.0246/0.012 + 0.724·4.9) (derived) [m² K W⁻¹]. */
export const gapResistance = 0.179;

const pane = 0.003048;
const paneConductivity = 1;

export type Mass = 'light' | 'heavy';

/** Layers of walls, roof and floor, inside first. The floor's insulation has neither density nor heat in the standard. */
export const layersOf = {
  light: {
    wall: [plasterboard(0.012), fibreglass(0.066), siding],
    roof: [plasterboard(0.01), fibreglass(0.1118), roofDeck],
    floor: [layer(0.025, 0.14, 650, 1200), layer(1.003, 0.04)],
  },
  heavy: {
    wall: [layer(0.1, 0.51, 1400, 1000), layer(0.0615, 0.04, 10, 1400), siding],
    roof: [plasterboard(0.01), fibreglass(0.1118), roofDeck],
    floor: [layer(0.08, 1.13, 1400, 1000), layer(1.007, 0.04)],
  },
} as const;

/** The windows' two panes made opaque (cases 200 to 250), glass massless. */
export const opaqueWindow = (): Layer[] => [
  layer(pane, paneConductivity),
  layer(0.012, 0.012 / gapResistance),
  layer(pane, paneConductivity),
];

/**
 * Two clear panes of 3.048 mm. The 2020 edition gives each 0.834 of normal sun through; with Fresnel's faces at index 1.526
 * that asks for an extinction of 31.0 m⁻¹ (derived), the reflectance is then 0.076 (0.075 in the standard, from memory).
 * The 0.0196 mm⁻¹ of older editions belongs to their clearer pane of 3.175 mm with 0.862 and lets 9 % too much sun in.
 */
export const clearPanes = (): Build => ({
  kind: 'panes',
  panes: 2,
  thickness: pane,
  conductivity: paneConductivity,
  refractiveIndex: 1.526,
  extinction: 31,
  gapResistance: gapResistance,
  emissivity: 0.84,
});
