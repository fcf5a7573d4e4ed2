import { beamShape } from '../../../core/index.ts';
import type { Lamp } from '../../../core/index.ts';

/** Where a lamp's beam is drawn to end across the section, to the front and to the back [radians from straight down]. */
export interface BeamEdges {
  readonly front: number;
  readonly back: number;
}

/** A beam that sends as much sideways is cut here: its edge would never meet the plants [radians]. */
const widest = (80 * Math.PI) / 180;
/** Steps of the search [radians]: half a degree. */
const step = Math.PI / 360;

/**
 * Angles to which the lamp's intensity keeps half of the most it sends anywhere across the section: 60° for an
 * evenly bright face, less for a reflector, and what a photometric file says on either side.
 */
export function beamEdges({ beam }: Pick<Lamp, 'beam'>): BeamEdges {
  const { intensity } = beamShape(beam);
  const at = (side: number, angle: number) => intensity(0, side * Math.sin(angle), -Math.cos(angle));
  let most = 0;
  for (let angle = 0; angle < Math.PI; angle += step) most = Math.max(most, at(-1, angle), at(1, angle));
  const outermost = (side: number) => {
    let found = 0;
    for (let angle = 0; angle <= widest; angle += step) if (at(side, angle) >= most / 2 - 1e-9) found = angle;
    return found;
  };
  return { front: outermost(-1), back: outermost(1) };
}
