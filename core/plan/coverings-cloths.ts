import { layer } from './coverings-additions.ts';
import { figure, negligible, whole } from './covering.ts';
import type { Covering } from './covering.ts';

const gaps = 'open share of the cloth, taken as the light it passes; estimate, not used for heat';
const threads = 'dark polythene threads 0.9 on the covered share; estimate, not used for heat';

/**
 * Shade cloth named by the share of light it takes: passes 1 − s. Knitted cloth is porous, so no fall with angle is
 * put on it; measured cloths shade a little more at slanting light, and the true shade may differ from the nominal
 * (Yates 1989, Acta Horticulturae 257:201–217).
 */
function shadeCloth(percent: number, price: number): Covering {
  const passes = 1 - percent / 100;
  return layer(`shade-${percent}`, `Shade cloth ${percent} %`, {
    use: 'shade',
    resistance: negligible,
    inside: figure(0.9 * (1 - passes), threads, 'low'),
    outside: figure(0.9 * (1 - passes), threads, 'low'),
    longWave: figure(passes, gaps, 'low'),
    light: figure(
      passes,
      'nominal shade s passes 1 − s (growers’ guides to shade cloth; the true shade differs by some points)',
      'medium',
    ),
    reflectance: figure(0.05 * (1 - passes), 'dark cloth, estimate', 'low'),
    airShare: whole,
    price,
    life: 8,
  });
}

function sheer(id: string, name: string, passes: number, spread: string, price: number): Covering {
  return layer(id, name, {
    use: 'sheer',
    resistance: negligible,
    inside: figure(0.9 * (1 - passes), 'polyester cloth 0.9 on the covered share, estimate', 'low'),
    outside: figure(0.9 * (1 - passes), 'polyester cloth 0.9 on the covered share, estimate', 'low'),
    longWave: figure(
      0.6 * passes,
      'open share of the cloth, estimate; light goes straight through it, heat does not read it',
      'low',
    ),
    light: figure(passes, `${spread}, from memory`, 'low'),
    reflectance: figure(0.7 * (1 - passes), 'white cloth throws back most of what it holds, estimate', 'low'),
    airShare: whole,
    price,
    life: 8,
  });
}

/** Shade cloths over the cover and sheer curtains before a window. */
export const cloths: readonly Covering[] = [
  shadeCloth(30, 1.5),
  shadeCloth(50, 1.8),
  shadeCloth(60, 2),
  sheer('sheer-net', 'Net curtain', 0.7, 'white net 0.6–0.8', 6),
  sheer('sheer-voile', 'Voile curtain', 0.5, 'white voile 0.4–0.6', 8),
];
