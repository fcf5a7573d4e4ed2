import fc from 'fast-check';
import { lampTechnologies } from '../../core/index.ts';
import { between, hours } from './shape-arbitrary.ts';

/** Nothing more often than not for things few places have. */
export const seldom = <T>(of: fc.Arbitrary<T>): fc.Arbitrary<T | null> =>
  fc.oneof({ weight: 2, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: of });
export const often = <T>(of: fc.Arbitrary<T>): fc.Arbitrary<T | null> => fc.option(of, { freq: 3 });

export const rooms = fc.oneof(
  fc.record({ kind: fc.constant('constant'), temperature: between(0, 25) }),
  fc.record({
    kind: fc.constant('schedule'),
    day: between(12, 24),
    night: between(4, 20),
    dayFrom: fc.constant('06:30'),
    dayTo: fc.constant('22:30'),
  }),
  fc.record({ kind: fc.constant('following'), temperature: between(5, 20), factor: between(0, 1) }),
  fc.record({
    kind: fc.constant('series'),
    from: fc.constantFrom('11-01', '01-01', '07-15'),
    stepHours: fc.constantFrom(1, 6, 24),
    values: fc.array(between(5, 25), { minLength: 1, maxLength: 60 }),
    otherwise: between(10, 20),
  }),
);

/** Power and volume of things as shares of what the place has room for; `sizedTo` makes them figures. */
export const heaters = fc
  .array(
    fc.record({
      kind: fc.constantFrom('fan', 'tubular', 'oil-filled', 'propane', 'paraffin', 'heat-mat', 'heat-pump'),
      power: fc.constantFrom(60, 300, 1000, 3000, 20000),
      setPointDay: between(0, 25),
      setPointNight: between(-2, 22),
      differential: fc.constantFrom(1, 0, 0.3, 3),
      hours: seldom(hours),
      frostWatch: seldom(between(-1, 8)),
      tank: seldom(between(1, 50)),
      flued: fc.boolean(),
    }),
    { maxLength: 3 },
  )
  .map((list) =>
    list.map((each, index) => ({
      ...each,
      id: `h${index}`,
      name: `Heater ${index}`,
      tank: each.kind === 'propane' || each.kind === 'paraffin' ? each.tank : null,
    })),
  );

export const lamps = fc
  .array(
    fc.record({
      technology: fc.constantFrom(...lampTechnologies.map((each) => each.id)),
      /** Electricity of all of them a square metre of floor [W m⁻²]. */
      density: fc.constantFrom(20, 60, 150),
      efficacy: between(0.5, 3),
      count: fc.constantFrom(1, 2, 6),
      height: between(0.05, 0.3),
      length: between(0.05, 1.2),
      width: between(0.02, 0.6),
      on: fc.constant('06:00'),
      off: fc.constantFrom('10:00', '18:15', '24:00', '02:00'),
      dimming: fc.constantFrom(1, 0.4),
      driver: fc.constantFrom('inside', 'outside'),
    }),
    { maxLength: 2 },
  )
  .map((list) => list.map((each, index) => ({ ...each, id: `l${index}`, name: `Lamp ${index}` })));

export const waterShares = fc.array(
  fc.record({
    form: fc.constantFrom('drum', 'canister', 'bottle', 'trough'),
    count: fc.constantFrom(1, 3, 20),
    /** Share of the place's volume. */
    share: between(0.001, 0.15),
  }),
  { maxLength: 2 },
);

export const ventShares = fc.array(
  fc.record({
    position: fc.constantFrom('roof', 'side', 'end'),
    /** Share of what it is cut into; three of one position still fit. */
    share: between(0.01, 0.3),
    height: between(0.1, 2),
    openAt: between(5, 30),
    band: fc.constantFrom(4, 0.5, 12),
  }),
  { maxLength: 3 },
);

export const doorShares = fc.record({
  share: between(0.1, 0.9),
  tall: between(0.4, 1),
  hours,
  above: seldom(between(-5, 20)),
});

export const fans = fc.record({
  /** Changes of the whole air an hour. */
  changes: fc.constantFrom(5, 30, 120),
  /** Electricity for the air it moves [W per m³/h]. */
  effort: between(0, 0.1),
  onAt: between(5, 32),
  band: fc.constantFrom(3, 0.5, 10),
  leastSpeed: fc.constantFrom(0, 0.2, 1),
  draws: fc.constantFrom('around', 'outdoors', 'room'),
});

export const circulations = fc.record({
  /** Electricity a square metre of floor [W m⁻²]. */
  density: between(0, 5),
  airSpeed: between(0.1, 1.5),
  runs: fc.constantFrom('always', 'day', 'night'),
});

export const screens = fc
  .record({
    covering: fc.constantFrom('woven-screen', 'aluminised-screen'),
    closedWhen: fc.constantFrom('night', 'cold-night', 'hours'),
    below: between(-5, 10),
    times: hours,
  })
  .map(({ times, ...rest }) => ({ ...rest, ...times }));

export const fleeces = fc.record({
  covering: fc.constantFrom('fleece-17', 'fleece-30', 'fleece-60'),
  layers: fc.constantFrom(1, 2, 4),
  laidWhen: fc.constantFrom('night', 'cold-night', 'always'),
  below: between(-5, 8),
});
