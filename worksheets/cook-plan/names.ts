const FIELDS: Readonly<Record<string, string>> = {
  'mould.moulds': 'a mould (Mould, lining and fill)',
  'mould.density': 'the density of the mix (Mould, lining and fill)',
  'cookPlan.mouldId': 'which mould it is planned for',
  'cookPlan.wall': 'the wall of the mould',
  'cookPlan.start': 'the core when it goes in',
  'cookPlan.oven': 'the oven',
  'cookPlan.steam': 'the steam oven',
  'cookPlan.kettle': 'the kettle',
  'cookPlan.bathWater': 'the water in the pan',
  'cookPlan.bathStart': 'how warm the water goes in',
  'cookPlan.panLength': 'how long the pan is',
  'cookPlan.panWidth': 'how wide the pan is',
  'cookPlan.panHeight': 'how deep the pan is',
  'cookPlan.mouldsInPan': 'how many moulds share the pan',
  'cookPlan.level': 'how high the water stands',
  'cookPlan.altitude': 'the height above the sea',
  'cookPlan.ovenRecord.films': 'how well air and water give their heat',
  'cookPlan.ovenRecord.heating': 'how strongly the oven heats the pan',
  'cookPlan.ovenRecord.shift': 'how far the oven is off',
  'cookPlan.water': 'what the mix is made of',
  'cookPlan.target': 'the core to reach (type it, or choose a limit)',
  'cookPlan.hold': 'how long it is kept in the heat',
  'cookPlan.rest': 'how long it rests',
  'cookPlan.room': 'the room',
  'cookPlan.press': 'how long it is pressed',
  'cookPlan.pressAir': 'the air it is pressed in',
  'cookPlan.chill': 'a chill',
  'process.cookRuleSetId': 'whose rule on cooking',
  'process.cookLimitId': 'the one limit the plan names',
  'process.coolRuleSetId': 'whose rule on cooling',
};
const CHILL: Readonly<Record<string, string>> = {
  temp: 'how cold a stage of the chill is',
  minutes: 'how long a stage of the chill takes',
  until: 'the core at which a stage of the chill ends',
};

/** An input of the cook plan in the middle of a sentence. */
export function planFieldName(field: string): string {
  const known = FIELDS[field];
  if (known !== undefined) return known;
  if (field.startsWith('mould.moulds.')) return 'measures, headspace or lining of the mould';
  const [, list, , key = ''] = field.split('.');
  return list === 'chill' ? (CHILL[key] ?? field) : field;
}
