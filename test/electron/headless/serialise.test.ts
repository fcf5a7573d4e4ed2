import { describe, expect, it } from 'vitest';
import { NotSerialisable, serialise } from '../../../electron/headless/serialise.ts';

describe('results as JSON', () => {
  it('keep single figures whole and round series to six significant digits', () => {
    const value = {
      figure: 1 / 3,
      series: Float64Array.of(1 / 3, 123456.789, -0.000123456789),
      states: Uint8Array.of(0, 6),
    };
    expect(serialise(value)).toBe(
      '{"figure":0.3333333333333333,"series":[0.333333,123457,-0.000123457],"states":[0,6]}\n',
    );
  });

  it('keep null and leave out what is undefined', () => {
    expect(serialise({ a: null, b: undefined, c: [null, true, 'x'] })).toBe(
      '{"a":null,"c":[null,true,"x"]}\n',
    );
  });

  it.each([
    [{ places: [{ air: Float64Array.of(1, NaN) }] }, 'places[0].air[1], got NaN'],
    [{ cost: Infinity }, 'cost, got Infinity'],
    [{ deep: { list: [1, -Infinity] } }, 'deep.list[1], got -Infinity'],
    [{ list: [undefined] }, 'list[0], got undefined'],
    [{ when: new Date(0) }, 'when, got Date'],
    [{ map: new Map() }, 'map, got Map'],
    [{ big: 1n }, 'big, got bigint'],
  ])('are refused with the path where JSON would lose something: %o', (value, words) => {
    expect(() => serialise(value)).toThrow(NotSerialisable);
    expect(() => serialise(value)).toThrow(words);
  });
});
