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
  it('holds at least 30 groups with identifiers of their own', () => {
    expect(plantGroups.length).toBeGreaterThanOrEqual(30);
    expect(new Set(plantGroups.map(({ id }) => id)).size).toBe(plantGroups.length);
    for (const { id } of plantGroups) expect(id).toMatch(/^[a-z0-9][a-z0-9-]*$/);
  });

  it('gives every number with a source in words and a confidence', () => {
    for (const group of plantGroups) {
      const figures = groupNumberNames
        .map((name) => groupFigure[name](group))
        .filter((figure) => figure !== null);
      // Eleven may be absent: rest 2, chill 2, critical day length, dry months 2, a carbon curve's 4; the rest never.
      expect(figures.length).toBeGreaterThanOrEqual(groupNumberNames.length - 11);
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
    expect(groupEditProblems(echeveria, { killDays: 20 })[0]).toMatch(/declineDays at most killDays/);
    expect(groupEditProblems(echeveria, { carbonShift: 1 })[0]).toMatch(/carbonShift from 0/);
  });

  it('refuse a gain by hardening that does not fit between the dry and the wet limit', () => {
    expect(groupEditProblems(echeveria, { hardenGain: 3.5 })[0]).toMatch(
      /hardenGain at most damageColdWet less damageColdDry, got 3.5 and 3/,
    );
    expect(groupEditProblems(echeveria, { hardenGain: -1 })[0]).toMatch(/hardenGain at least 0/);
    expect(groupEditProblems(echeveria, { hardenGain: 3 })).toEqual([]);
    // Limits of the user's own that leave less room than the catalogue's gain are taken; the gain is cut to the room.
    expect(groupEditProblems(echeveria, { damageColdWet: -3 })).toEqual([]);
    for (const group of plantGroups) {
      const { hardenGain, damageColdDry, damageColdWet } = groupNumbers(group);
      expect(hardenGain, group.id).toBeLessThanOrEqual(damageColdWet - damageColdDry);
    }
  });
});
