/** Words of the printed forms: what stands on them before anybody writes. */
export const LOG_WORDS = {
  title: 'Cook and cooling log',
  about: 'Both logs with the drawn curve, the limits, the latest clock times and the verdicts, one page.',
  draw: 'Core: a point for every reading; join them; mark the limit with a line',
  squares: 'Each square: ______ min',
  noRules: 'Rule set: none chosen. Write limit and legs in before the cook.',
  cookReadings: 'Cook readings, at the coldest point',
  coolReadings: 'Cooling readings, at the warmest point, at least every 30 min',
  deviation: 'Deviation: what happened · decision on the product · cause · prevention',
} as const;

export const CLEANING_WORDS = {
  title: 'Cleaning record',
  about: 'One week of cleaning, tool by tool, with strength and contact time read off the pack.',
  noRules: 'Methods: your own cleaning plan; strength and time as the maker of the agent prints them',
  columns: ['What', 'Agent and strength', 'Time', 'Mo', 'Tu', 'We', 'Th', 'Fr', 'Sa', 'Su'],
  items: [
    'Grinder: head, plates, blades (count the parts)',
    'Cutter or mixer: bowl, blades, lid seal',
    'Filler or piping bags, tubes',
    'Moulds, press boards, weights',
    'Knives, boards, scale',
    'Tables, sinks, taps, handles',
    'Probe and thermometer, before each piece',
    'Slicer, taken apart, after cooked food',
    'Chillers: shelves, seals, fan guard',
    'Floor, drains, bins',
  ],
  lines: [
    'Take apart, rinse, wash hot with detergent, rinse, sanitise at the strength and for the time on the pack, let dry in air. Initial when done.',
    'Raw before cooked: tools for cooked food are cleaned apart. After an allergen clean before the next product, then look, and test where your plan says so.',
  ],
  checks: 'Checks of the week',
  wrong: 'What was found dirty or broken, what was done, what became of food it touched',
} as const;

export const THERMOMETER_LOG_WORDS = {
  title: 'Thermometer record',
  about: 'Checks of all thermometers over many weeks, in ice and in boiling water.',
  noRules: 'Tolerance and term: common practice, no source; no rule set',
  columns: [
    'Day',
    'Which',
    'In ice',
    'In boil',
    'Boils here',
    'Off at limit',
    'MUST SHOW',
    'In use or out',
    'By',
  ],
  lines: [
    'Ice: crushed ice and water, stirred, 2 minutes. Boil: rolling water; it boils cooler the higher you stand.',
    'Must show: limit, plus what it shows too much there, plus its error, rounded up to a step of its display.',
    'One that fails is taken out of use. What was cooked since its last good check is on hold.',
  ],
} as const;

/** What the check of a thermometer came to. */
export const CHECK_STATE = { pass: 'in use', fail: 'OUT', 'cannot-tell': 'cannot tell' } as const;
