/**
 * The order of the house: which folder may import which. Read by the dependency check (.ts, .tsx, .mjs)
 * and by our own reader of .astro and .mdx files, so that one table rules both.
 */

/** Top folders from the highest floor down. A file may import from its own floor and from those below. */
const FLOORS = /** @type {const} */ (['site', 'content', 'worksheets', 'calc']);

/**
 * Subjects of calc from the lowest up. A subject may import from rows before its own; subjects of one row
 * know nothing of each other. A new subject takes its place here before it can be imported.
 */
const CALC_ORDER = /** @type {const} */ ([
  ['quantities'],
  ['sources'],
  ['findings'],
  ['ingredients'],
  ['formula'],
  ['cure', 'mould', 'press'],
  ['dry-cure'],
  ['brine'],
  ['drying'],
  ['yield'],
  ['blend'],
  ['plan'],
  ['slicing'],
  ['seasoning', 'binder', 'casings', 'gelee'],
  ['process'],
  ['label'],
  ['probe-log'],
  ['heat'],
  ['chill-budget', 'thermometer'],
  ['lethality', 'cooling'],
  ['growth'],
  ['cook-plan'],
  ['batch'],
  ['kitchen'],
  ['exchange', 'trends'],
]);

/**
 * The subject a path of calc belongs to.
 * @param {string} path relative to the top of the repository
 */
function subjectOf(path) {
  const [floor, subject, ...rest] = path.split('/');
  return floor === 'calc' && rest.length > 0 ? (subject ?? null) : null;
}

/** @param {string} subject */
function rowOf(subject) {
  return CALC_ORDER.findIndex((row) => row.some((name) => name === subject));
}

/** @param {string} path */
function floorOf(path) {
  return FLOORS.findIndex((floor) => path.startsWith(`${floor}/`));
}

/**
 * What is wrong with one import, or null. Paths are relative to the top, slashes forward.
 * @param {string} from importing file
 * @param {string} to imported file
 * @returns {string | null}
 */
export function importFault(from, to) {
  const fromFloor = floorOf(from);
  const toFloor = floorOf(to);
  if (to.startsWith('tests/') && !from.startsWith('tests/')) return 'only tests may import tests';
  if (fromFloor === -1 || toFloor === -1) return null;
  if (toFloor < fromFloor)
    return `${FLOORS[fromFloor]} may not import from ${FLOORS[toFloor]}, the floor above it`;

  const toSubject = subjectOf(to);
  if (toSubject === null) return null;
  const fromSubject = subjectOf(from);
  if (fromSubject === toSubject) return null;
  if (to !== `calc/${toSubject}/index.ts`) return `calc/${toSubject} is imported by its index.ts only`;
  if (fromSubject === null) return null;

  const fromRow = rowOf(fromSubject);
  const toRow = rowOf(toSubject);
  const unplaced = fromRow === -1 ? fromSubject : toRow === -1 ? toSubject : null;
  if (unplaced !== null) return `calc/${unplaced} has no place yet in CALC_ORDER (tests/tools/floors.mjs)`;
  return toRow < fromRow
    ? null
    : `calc/${fromSubject} may not know calc/${toSubject}, which comes after or beside it`;
}
