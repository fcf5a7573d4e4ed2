/**
 * The import rules of the project (`npm run lint`).
 *
 * Data flows one way: a room of core/ imports only rooms named before it, everything outside core/ takes the
 * engine from core/index.ts, and each platform library has one door.
 */
const coreRooms = [
  'plan',
  'sun',
  'weather',
  'fabric',
  'light',
  'heat',
  'plants',
  'cost',
  'season',
  'night',
  'advice',
  'explain',
];

const coreOrder = coreRooms.slice(0, -1).map((room, place) => ({
  name: `core-order-${room}`,
  comment: `core/${room} imports only rooms before it: ${coreRooms.slice(0, place).join(', ') || 'none'}`,
  severity: 'error',
  from: { path: `^core/${room}/` },
  to: { path: `^core/(${coreRooms.slice(place + 1).join('|')})/` },
}));

module.exports = {
  forbidden: [
    ...coreOrder,
    {
      name: 'core-known-rooms',
      comment: 'core/ holds the rooms listed above and index.ts, nothing else',
      severity: 'error',
      from: { path: '^core/', pathNot: `^core/((${coreRooms.join('|')})/|index[.]ts$)` },
      to: {},
    },
    {
      name: 'core-index-is-last',
      comment: 'no room of core/ imports core/index.ts',
      severity: 'error',
      from: { path: '^core/' },
      to: { path: '^core/index[.]ts$' },
    },
    {
      name: 'core-is-pure',
      comment: 'core/ imports no other room, no Node module and no package but those named (pure libraries)',
      severity: 'error',
      from: { path: '^core/' },
      to: {
        pathNot:
          '^(core/|node_modules/(valibot|@valibot/to-json-schema|temporal-polyfill|temporal-spec|temporal-utils)/)',
        couldNotResolve: false,
      },
    },
    {
      name: 'valibot-in-plan-only',
      comment: 'schemas are the business of core/plan',
      severity: 'error',
      from: { path: '^core/', pathNot: '^core/plan/' },
      to: { path: '^node_modules/(valibot|@valibot)/' },
    },
    {
      name: 'engine-through-its-index',
      comment: 'outside core/ the engine is core/index.ts; only tests look into the rooms they mirror',
      severity: 'error',
      from: { path: '^(electron|renderer)/' },
      to: { path: '^core/', pathNot: '^core/index[.]ts$' },
    },
    {
      name: 'renderer-reaches-the-host-by-contract',
      comment: 'renderer/ knows core/index.ts and electron/contract.ts, no other part of the project',
      severity: 'error',
      from: { path: '^renderer/' },
      to: { path: '^(electron|test)/', pathNot: '^electron/contract[.]ts$' },
    },
    {
      name: 'renderer-takes-types-from-the-contract',
      comment: 'electron/contract.ts gives the renderer types only',
      severity: 'error',
      from: { path: '^renderer/' },
      to: { path: '^electron/contract[.]ts$', dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'renderer-has-no-node',
      comment: 'the user interface runs in a browser',
      severity: 'error',
      from: { path: '^renderer/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'contract-stands-alone',
      comment: 'electron/contract.ts needs the engine and a schema library, no part of the host',
      severity: 'error',
      from: { path: '^electron/contract[.]ts$' },
      to: { path: '^(electron|renderer|test)/' },
    },
    {
      name: 'host-knows-no-shell',
      comment: 'electron/host is shared by the shells and imports none of them',
      severity: 'error',
      from: { path: '^electron/host/' },
      to: { path: '^electron/(desktop|local|headless|launch|start[.]ts)' },
    },
    {
      name: 'shells-stay-apart',
      comment: 'desktop, local and headless share the host, not each other',
      severity: 'error',
      from: { path: '^electron/(desktop|local|headless)/' },
      to: { path: '^electron/(desktop|local|headless)/', pathNot: '^electron/$1/' },
    },
    {
      name: 'electron-in-desktop-only',
      severity: 'error',
      from: { pathNot: '^electron/desktop/' },
      to: { path: '^(node_modules/)?electron(/|$)', pathNot: '^electron/.*[.](ts|json)$' },
    },
    {
      name: 'better-sqlite3-in-store-only',
      comment: 'the database has one door; tests of the store may look at the file it wrote',
      severity: 'error',
      from: { pathNot: '^(electron/host/store|test/electron/(host/)?store|test/e2e)/' },
      to: { path: '^node_modules/(@types/)?better-sqlite3/' },
    },
    {
      name: 'tests-are-imported-by-tests',
      severity: 'error',
      from: { pathNot: '^test/' },
      to: { path: '^test/' },
    },
    { name: 'no-circles', severity: 'error', from: {}, to: { circular: true } },
    { name: 'resolvable', severity: 'error', from: {}, to: { couldNotResolve: true } },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: 'specify',
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'svelte', 'types', 'node', 'default'],
      extensions: ['.ts', '.js', '.mjs', '.cjs', '.svelte', '.d.ts', '.json'],
    },
  },
};
