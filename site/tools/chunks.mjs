/**
 * How the scripts of the site are parted into files. Left alone, the bundler makes a file of every module that two
 * pages share in different company: a worksheet with a batch then asks for over a hundred of them, and on an old
 * tablet the asking costs more than the bytes. What is always fetched together is put together here. Weights are
 * watched by tests/site/weight.test.ts.
 *
 * Order matters: a group takes what it matches with all that this imports, except what an earlier group took. So the
 * lower floors come first, and files never import each other in a circle.
 */

/** Subjects of calc that a page needs as a whole or not at all, in their order. Heat is not: most of it runs in the worker. */
const WHOLE_SUBJECTS = [
  'mould',
  'cure',
  'dry-cure',
  'brine',
  'lethality',
  'cooling',
  'thermometer',
  'gelee',
  'binder',
  'casings',
  'plan',
  'label',
];

/** Parts of the interface that every worksheet shows, and the store under them. */
const FRAME =
  /\/worksheets\/(?:state\/(?:store|shown|autosave|start|derived|typed|trouble|use-shared|clock|paths|rows)\.ts|example\/mode\.ts|parts\/(?:later|worksheet-frame|computed|not-yet|links|field-frame|finding-line|finding-list|choice-field|number-box|number-field|number-text|use-typing|text-box|text-field|answer|worked|blank-head|needed|row-tools)\.tsx?)$/;

/** What keeps batches on the device. The name of the database alone is asked for by pages without one. */
const KEEPING =
  /\/worksheets\/state\/(?!database-name)|\/worksheets\/parts\/(?:bench-tools|conflicts|value-words)\.tsx?$|\/node_modules\/idb\/|\/calc\/batch\/(?:batch-number|merge|checksum|history|migrate|read-batch|schema\/.*|same-person|state|entry-shape|trace|summary|new-batch)\.ts$|\/valibot\//;

const CARD =
  /\/worksheets\/(?:parts\/(?:card-head|print-card|card-blocks|figure-table|stop-lines|verdict-line)|batch-sheet\/(?:use-paper|write-in|sheet-verdict|build\/(?:filled|verdicts)))\.tsx?$/;

/** @type {readonly { name: string, test: RegExp }[]} */
const GROUPS = [
  { name: 'preload-helper', test: /vite\/preload-helper/ },
  { name: 'database-name', test: /\/worksheets\/state\/database-name\.ts$/ },
  { name: 'preact', test: /\/node_modules\/(?:preact|nanostores|@astrojs\/preact)\// },
  { name: 'quantities', test: /\/calc\/quantities\// },
  { name: 'frame', test: FRAME },
  { name: 'keeping', test: KEEPING },
  { name: 'formula', test: /\/calc\/(?:ingredients|formula)\/.*\.ts$/ },
  ...WHOLE_SUBJECTS.map((subject) => ({ name: subject, test: new RegExp(`/calc/${subject}/.*\\.ts$`) })),
  { name: 'card', test: CARD },
];

/** For `output.codeSplitting` of the bundler. */
export const CHUNKS = { groups: GROUPS.map((group, at) => ({ ...group, priority: GROUPS.length - at })) };
