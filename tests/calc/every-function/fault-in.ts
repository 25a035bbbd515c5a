interface Allowed {
  readonly unbounded?: boolean;
  readonly blank?: RegExp;
}

/** Where a result holds NaN or an endless number, or null. Generators are run to their end, functions left alone. */
export function faultIn(value: unknown, allowed: Allowed, path = 'the result', depth = 0): string | null {
  if (typeof value === 'number') {
    if (Number.isNaN(value)) return allowed.blank?.test(path) ? null : `NaN in ${path}`;
    return Number.isFinite(value) || allowed.unbounded ? null : `${value} in ${path}`;
  }
  if (typeof value !== 'object' || value === null || depth > 12) return null;
  if (isGenerator(value)) {
    let step = value.next();
    while (!step.done) step = value.next();
    return faultIn(step.value, allowed, path, depth + 1);
  }
  const members: Iterable<readonly [unknown, unknown]> =
    value instanceof Map
      ? value
      : ArrayBuffer.isView(value)
        ? [...numbersOf(value)].entries()
        : Object.entries(value);
  for (const [key, member] of members) {
    const fault = faultIn(member, allowed, `${path}.${String(key)}`, depth + 1);
    if (fault) return fault;
  }
  return null;
}

const numbersOf = (view: ArrayBufferView): Iterable<unknown> =>
  Symbol.iterator in view ? (view as ArrayBufferView & Iterable<unknown>) : [];

function isGenerator(value: object): value is Generator {
  return Symbol.iterator in value && 'next' in value && typeof value.next === 'function';
}
