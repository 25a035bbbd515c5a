/**
 * A field of the batch is named by a path such as `cure.nitriteTarget` or
 * `formula.lines.<id>.amount`; a row of a list is named by its `id`, a signature by its
 * `role`. Findings name fields the same way,
 * so that a warning shows where it belongs.
 */

type Branch = Record<string, unknown>;

function isBranch(value: unknown): value is Branch {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function rowIndex(list: readonly unknown[], key: string, path: string): number {
  const index = list.findIndex((row) => isBranch(row) && (row.id ?? row.role) === key);
  if (index < 0) throw new Error(`No row "${key}" on the path ${path}`);
  return index;
}

/** Reads the field at a path. Throws when there is none: a path is the program's, not the user's. */
export function getAt(root: unknown, path: string): unknown {
  let here = root;
  for (const key of path.split('.')) {
    if (Array.isArray(here)) here = here[rowIndex(here, key, path)];
    else if (isBranch(here) && key in here) here = here[key];
    else throw new Error(`Nothing at "${key}" on the path ${path}`);
  }
  return here;
}

/** True when a path still leads somewhere: a row may have been removed since. */
export function hasPath(root: unknown, path: string): boolean {
  try {
    getAt(root, path);
    return true;
  } catch {
    return false;
  }
}

/** A copy of the tree with one field replaced. What did not change is shared, not copied. */
export function setAt<T>(root: T, path: string, value: unknown): T {
  const [key, ...rest] = path.split('.');
  if (key === undefined || key === '') return value as T;
  const below = rest.join('.');
  if (Array.isArray(root)) {
    const index = rowIndex(root, key, path);
    const copy = root.slice();
    copy[index] = below ? setAt(copy[index], below, value) : value;
    return copy as T;
  }
  if (isBranch(root) && key in root) {
    return { ...root, [key]: below ? setAt(root[key], below, value) : value };
  }
  throw new Error(`Nothing at "${key}" on the path ${path}`);
}
