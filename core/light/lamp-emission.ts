import type { Lamp } from '../plan/equipment.ts';
import type { DimmerKind } from '../plan/lamps.ts';
import { lampTechnology } from '../plan/lamps.ts';
import { beamShape, zonalLumens } from './beam.ts';
import { lampFaces } from './field-layout.ts';
import { areaOfRectangle, pointFactor, rectangleAt } from './rectangles.ts';

/**
 * Electric input as a share of full at a light output of 0–1 of full: a fixed part and a part that follows the
 * light; a filament's light falls as input to the power 2.1. From memory of dimmer data sheets, low confidence.
 */
const dimmers: Readonly<Record<DimmerKind, (output: number) => number>> = {
  led: (output) => 0.02 + 0.98 * output,
  fluorescent: (output) => 0.15 + 0.85 * output,
  discharge: (output) => 0.25 + 0.75 * output,
  filament: (output) => output ** (1 / 2.1),
};

/**
 * Electric power at the plug of all lamps of an entry at their dimming [W]: by the technology's dimmer, or by the
 * straight line through full and the measured `wattsAtHalf`, which below half never falls under the line to nothing.
 */
export function lampWatts(lamp: Lamp): number {
  const { watts, count, dimming, wattsAtHalf } = lamp;
  if (wattsAtHalf === null) return watts * count * dimmers[lampTechnology(lamp.technology).dimmer](dimming);
  const line = wattsAtHalf + (watts - wattsAtHalf) * (2 * dimming - 1);
  return count * (dimming < 0.5 ? Math.max(line, 2 * dimming * wattsAtHalf) : line);
}

/**
 * Share of the first light left after the hours burnt, 0–1: on a straight line from 1 to the technology's
 * `maintenance` at its life, and level after it, where a real lamp may give less still. A lamp whose light was
 * read is taken as it is.
 */
export function lightLeft(lamp: Lamp): number {
  if (lamp.light.kind === 'reading') return 1;
  const { life, maintenance } = lampTechnology(lamp.technology);
  return 1 - (1 - maintenance.value) * Math.min(1, lamp.burnt / life.value);
}

/** Photons 400–700 nm of all lamps of an entry, as aged and dimmed as they are [µmol s⁻¹]. */
export function lampPhotons(lamp: Lamp): number {
  return photonsOfOne(lamp) * lamp.count * lightLeft(lamp) * lamp.dimming;
}

/** Photons of one lamp at full output [µmol s⁻¹]. */
function photonsOfOne(lamp: Lamp): number {
  const { light, beam } = lamp;
  switch (light.kind) {
    case 'efficacy':
      return lamp.watts * lamp.efficacy;
    case 'lumens':
      return light.lumens / luxPerMicromoleOf(lamp, light.luxPerMicromole);
    case 'reading': {
      const share = shareUnderMiddle(lamp, light.distance);
      // A beam with no light straight down cannot be read there.
      if (!(share > 0)) return lamp.watts * lamp.efficacy;
      const ppfd =
        light.unit === 'ppfd' ? light.value : light.value / luxPerMicromoleOf(lamp, light.luxPerMicromole);
      return ppfd / share;
    }
    case 'file':
      // Without a file there is nothing to sum.
      if (beam.kind !== 'file') return lamp.watts * lamp.efficacy;
      return zonalLumens(beam.photometry) / luxPerMicromoleOf(lamp, light.luxPerMicromole);
  }
}

function luxPerMicromoleOf(lamp: Lamp, own: number | null): number {
  return own ?? lampTechnology(lamp.technology).luxPerMicromole.value;
}

/** Angle between the points that stand for a face, as seen from under it [radians]: beams of a few degrees come out within 1 % (tested). */
const angleApart = 0.02;

/**
 * Flux density straight under the middle of one lamp, `distance` below its face, for 1 µmol s⁻¹ of it, nothing
 * thrown back [m⁻²]. Beams without a closed form are summed over points evenly apart in angle as seen from there, so
 * that what hangs right overhead is never missed.
 */
export function shareUnderMiddle(lamp: Lamp, distance: number): number {
  const beam = beamShape(lamp.beam);
  const faces = lampFaces(rectangleAt(0, 0, 2, 1), { ...lamp, count: 1, height: distance });
  let sum = 0;
  for (const { face, share } of faces) {
    const density = share / areaOfRectangle(face);
    if (beam.even) {
      sum += density * pointFactor(0, 0, face, distance);
      continue;
    }
    const rows = pointsSeen(face.y1, face.y2, distance);
    for (const column of pointsSeen(face.x1, face.x2, distance)) {
      for (const row of rows) {
        const r = Math.hypot(column.at, row.at, distance);
        const intensity = beam.intensity(-column.at / r, -row.at / r, -distance / r);
        sum += (density * column.width * row.width * intensity * distance) / r ** 3;
      }
    }
  }
  return sum;
}

/** Points along one side of a face evenly apart in angle, each with the width it stands for [m]. */
function pointsSeen(low: number, high: number, distance: number): { at: number; width: number }[] {
  const [from, to] = [Math.atan2(low, distance), Math.atan2(high, distance)];
  const count = Math.max(1, Math.ceil((to - from) / angleApart));
  const edge = (k: number) => distance * Math.tan(from + (k * (to - from)) / count);
  return Array.from({ length: count }, (_, k) => ({
    at: distance * Math.tan(from + ((k + 0.5) * (to - from)) / count),
    width: edge(k + 1) - edge(k),
  }));
}
