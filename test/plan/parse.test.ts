import { describe, expect, it } from 'vitest';
import { demonstrationPlan, parsePlan } from '../../core/index.ts';

const [place] = demonstrationPlan.places;

/** Problems of the demonstration plan with something changed. */
function problemsOf(changes: object) {
  const reading = parsePlan({ ...demonstrationPlan, ...changes });
  return reading.ok ? [] : reading.problems;
}

describe('a plan that is wrong is refused in words, with the path', () => {
  it('a missing field', () => {
    const { places: _places, ...rest } = demonstrationPlan;
    const reading = parsePlan(rest);
    expect(reading).toEqual({
      ok: false,
      problems: [{ path: 'places', message: 'expected this field, got nothing' }],
    });
  });

  it('a field the schema does not know', () => {
    expect(problemsOf({ extra: 1 })).toEqual([
      { path: 'extra', message: 'expected no field of this name, got "extra"' },
    ]);
  });

  it('a number out of range, as text, missing, or not finite', () => {
    const withLength = (length: unknown) =>
      problemsOf({ places: [{ ...place, shape: { ...place.shape, length } }], lots: [] });
    for (const [value, got] of [
      [-2, '-2'],
      ['4', '"4"'],
      [undefined, 'nothing'],
      [NaN, 'NaN'],
    ] as const) {
      expect(withLength(value)).toEqual([
        { path: 'places.0.shape.length', message: `expected a number from 0.5 to 60 m, got ${got}` },
      ]);
    }
  });

  it('a covering that does not exist and two places of one name', () => {
    expect(problemsOf({ places: [{ ...place, covering: 'moonlight' }], lots: [] })).toEqual([
      { path: 'places.0.covering', message: 'expected a known covering, got moonlight' },
    ]);
    expect(problemsOf({ places: [place, place], lots: [] })).toEqual([
      { path: 'places.1.id', message: `expected an id used once, got ${place.id} again` },
    ]);
  });

  it('something that is no plan at all', () => {
    expect(parsePlan(3)).toEqual({ ok: false, problems: [{ path: '', message: 'expected Object, got 3' }] });
  });
});
