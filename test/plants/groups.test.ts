import { describe, expect, it } from 'vitest';
import type { Figure } from '../../core/plan/groups.ts';
import {
  groupEditProblems,
  groupFigure,
  groupNumberNames,
  groupNumberProblems,
  groupNumbers,
  plantGroup,
  plantGroups,
} from '../../core/plan/groups.ts';

describe('the catalogue of plant groups', () => {
  it('holds at least 24 groups with identifiers of their own', () => {
    expect(plantGroups.length).toBeGreaterThanOrEqual(24);
    expect(new Set(plantGroups.map(({ id }) => id)).size).toBe(plantGroups.length);
    for (const { id } of plantGroups) expect(id).toMatch(/^[a-z0-9][a-z0-9-]*$/);
  });

  it('gives every number with a source in words and a confidence', () => {
    for (const group of plantGroups) {
      const figures = groupNumberNames
        .map((name) => groupFigure[name](group))
        .filter((figure) => figure !== null);
      // Seven numbers may be absent: rest 2, chill 2, critical day length, dry months 2; the rest never.
      expect(figures.length).toBeGreaterThanOrEqual(groupNumberNames.length - 7);
      for (const figure of figures as Figure[]) {
        expect(Number.isFinite(figure.value)).toBe(true);
        expect(figure.source.length, group.id).toBeGreaterThan(10);
        expect(figure.source, group.id).not.toMatch(/\b[SDMP]:?\d*\b(?= |$)|undefined/);
        expect(['high', 'medium', 'low']).toContain(figure.confidence);
      }
    }
  });

  it('keeps the thresholds of every group in order', () => {
    for (const group of plantGroups) expect(groupNumberProblems(groupNumbers(group)), group.id).toEqual([]);
  });

  it('gives null for a group it does not know', () => expect(plantGroup('cabbage')).toBeNull());
});

describe("the user's own numbers", () => {
  const echeveria = plantGroups.find(({ id }) => id === 'echeveria') as (typeof plantGroups)[number];

  it('stand in the place of the catalogue’s and leave it as it is', () => {
    expect(groupNumbers(echeveria, { damageColdDry: -6 }).damageColdDry).toBe(-6);
    expect(groupNumbers(echeveria).damageColdDry).toBe(-4);
  });

  it('are refused with the reason where they name nothing, break the order or are not finite', () => {
    expect(groupEditProblems(echeveria, { colour: 3 })[0]).toMatch(/expected the name .* got 'colour'/);
    expect(groupEditProblems(echeveria, { toString: 3 })[0]).toMatch(/got 'toString'/);
    expect(groupEditProblems(echeveria, { baseTemperature: 40 })[0]).toMatch(
      /baseTemperature below optimumLow/,
    );
    expect(groupEditProblems(echeveria, { ceiling: Number.NaN }).length).toBeGreaterThan(0);
    expect(groupEditProblems(echeveria, { inertiaDays: 0 })[0]).toMatch(/inertiaDays above 0/);
    expect(groupEditProblems(echeveria, { dryFromMonth: 13 })[0]).toMatch(/month from 1 to 12/);
    expect(() => groupNumbers(echeveria, { lightHold: 50 })).toThrow(/echeveria/);
    expect(groupEditProblems(echeveria, { winterHold: 7 })).toEqual([]);
  });
});
