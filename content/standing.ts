/**
 * Sentences that stand the same wherever they appear: on caution pages, at the foot of every page
 * and on printed sheets. They are kept by code and never reworded in place.
 */
export const STANDING = {
  LC: {
    name: 'Local code',
    text: 'Limits change with the country, the state and the kind of business. Use the rule set your own authority enforces, and get its answer in writing.',
  },
  PA: {
    name: 'Accepted process',
    text: 'This needs a process that your authority or a qualified process specialist has accepted. A filled-in worksheet is not leave to sell.',
  },
  TR: {
    name: 'Trained people only',
    text: 'Only trained staff do this, with guards in place, under the safety rules of the workplace.',
  },
  NH: {
    name: 'No shortcuts',
    text: 'Do not change the salt, nitrite, acidity, thickness, time or temperature unless the whole plan is checked again.',
  },
  MD: {
    name: 'Medical help',
    text: 'If someone has eaten curing salt by mistake, or turns blue or short of breath, call the emergency services at once and show them the label.',
  },
  WD: {
    name: 'If in doubt, throw it out',
    text: 'Do not taste it. Set it apart, mark it HOLD and ask. If you cannot prove it safe, throw it away and write that down.',
  },
} as const satisfies Record<string, { name: string; text: string }>;

/** Stands in the foot of every page. */
export const STANDING_NOTE =
  'A planning and record sheet. It does not validate a process and it does not replace your food-safety plan. Follow your local food code, and have your plan accepted by your authority or a qualified process specialist before you sell.';

/** The same on a printed sheet, where it has one line. */
export const SHEET_NOTE =
  'Planning and record sheet: it validates no process. Follow your local food code and your accepted plan.';
