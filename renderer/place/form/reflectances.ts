/** A face that throws plant light back: how much of it, 0–1, and who says so. */
export interface Reflectance {
  readonly id: string;
  readonly name: string;
  readonly value: number;
  readonly source: string;
}

export const reflectances: readonly Reflectance[] = [
  {
    id: 'white',
    name: 'white paint or plaster',
    value: 0.8,
    source: 'lighting makers’ tables give matt white 80 %, flat white paint 75 to 90 % in the trade press',
  },
  {
    id: 'silver',
    name: 'silver film',
    value: 0.9,
    source: 'metallised polyester film just over 90 % (trade press 2015); kitchen foil only 50 to 55 %',
  },
  {
    id: 'grey',
    name: 'light grey',
    value: 0.4,
    source: 'lighting makers’ tables give light grey 40 %',
  },
  {
    id: 'black',
    name: 'black',
    value: 0.05,
    source: 'matt black 4 to 5 % (from memory); lighting makers’ tables give black 10 %',
  },
  {
    id: 'glass',
    name: 'glass by night',
    value: 0.1,
    source: 'estimate: a clear pane sends back 8 % straight on and more at a slant',
  },
];

/** The face of the list that throws back just so much; null for a number of one's own. */
export const reflectanceAt = (value: number): Reflectance | null =>
  reflectances.find((each) => Math.abs(each.value - value) < 1e-9) ?? null;
