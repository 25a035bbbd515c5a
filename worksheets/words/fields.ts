/** What a field is called in a sentence, by the last key of its path. */
const FIELD_WORDS: Readonly<Record<string, string>> = {
  actual: 'weight off the scale',
  actualFills: 'weight filled',
  actualLinks: 'weight of a link',
  afterBrine: 'weight after the brine',
  afterInjection: 'weight after injecting',
  amount: 'planned amount',
  at: 'time',
  batchNo: 'batch number',
  by: 'name',
  cause: 'cause',
  checked: 'checked by',
  checkedBy: 'checked by',
  coolRuleSetId: 'rule set for cooling',
  cookLimitId: 'limit for the cook',
  curingSaltActual: 'curing salt off the scale',
  decision: 'decision',
  dispatches: 'where it went',
  endedAt: 'end',
  error: 'error of the probe',
  excluded: 'left out',
  finished: 'finished weight',
  initials: 'initials',
  kitchen: 'kitchen',
  lifecycle: 'state',
  lot: 'lot',
  made: 'made by',
  madeBy: 'in charge',
  name: 'name',
  nitrate: 'nitrate by the pack',
  nitrite: 'nitrite by the pack',
  nitriteTarget: 'nitrite wanted',
  notes: 'notes',
  now: 'weight now',
  offset: 'offset of the probe',
  ph: 'pH',
  prevention: 'prevention',
  saltActual: 'salt off the scale',
  startedAt: 'start',
  startedOn: 'start',
  sugarActual: 'sugar off the scale',
  temperature: 'core reading',
  text: 'text',
  useBy: 'use by',
  verified: 'verified by',
  waterActivity: 'water activity',
  weighedBy: 'weighed by',
  what: 'what happened',
};

/** Lists whose rows have no name of their own. */
const LIST_WORDS: Readonly<Record<string, string>> = {
  deviations: 'deviation',
  dispatches: 'where it went',
  lifecycle: 'state',
  readings: 'reading',
  signOffs: 'signature',
};

/** `saltTarget` → "salt target": a field nobody has named yet still reads as words. */
const apart = (key: string) => key.replaceAll(/(?<=[a-z0-9])(?=[A-Z])/g, ' ').toLowerCase();

/** The field at the end of a path in words: "weight off the scale". */
export function fieldWords(path: string): string {
  const keys = path.split('.');
  const last = keys.at(-1) ?? '';
  const named = FIELD_WORDS[last];
  if (named !== undefined) return named;
  // A row's id, or its place, says nothing to a person.
  const list = keys.at(-2) ?? '';
  const row = LIST_WORDS[list] ?? FIELD_WORDS[list];
  return row ?? apart(last);
}
