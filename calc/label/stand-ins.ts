/**
 * Rows of the kitchen's own compositions give water, protein, fat and salt alone. What else a label asks for is taken
 * from the nearest row of the published table: saturates in the share they have of its fat, sugars, fibre and other
 * carbohydrate in the share they have of what is neither water nor protein nor fat, the rest as it stands. Reduced wines
 * have no nearest row: what is left of their alcohol nobody knows.
 * The pairing is ours (common practice, no source): fit for planning a label, not for printing one.
 */
export const STAND_INS: Readonly<Record<string, string>> = {
  'kitchen-pork-shoulder-lean-95': 'pork-butt-lean',
  'kitchen-pork-shoulder-80-20': 'pork-butt-lf',
  'kitchen-pork-trim-50-50': 'pork-belly',
  'kitchen-pork-belly': 'pork-belly',
  'kitchen-pork-jowl': 'pork-jowl',
  'kitchen-pork-backfat': 'pork-backfat',
  'kitchen-veal-shoulder': 'veal-shoulder-lean',
  'kitchen-beef-chuck-80-20': 'beef-ground-80',
  'kitchen-mutton-leg': 'lamb-stew-lean',
  'kitchen-venison-shoulder': 'venison',
  'kitchen-rabbit': 'rabbit-domestic',
  'kitchen-chicken-thigh': 'chicken-thigh',
  'kitchen-chicken-breast': 'chicken-breast',
  'kitchen-duck-leg': 'duck-meat-only',
  'kitchen-duck-skin-fat': 'duck-meat-skin',
  'kitchen-guinea-fowl': 'guinea-meat-only',
  'kitchen-pheasant': 'pheasant-meat-only',
  'kitchen-chicken-liver': 'chicken-liver',
  'kitchen-pork-liver': 'pork-liver',
  'kitchen-bacon-dry-cured': 'bacon-raw',
  'kitchen-ham-cooked': 'ham-extra-lean-roasted',
  'kitchen-egg': 'egg-whole',
  'kitchen-egg-white': 'egg-white',
  'kitchen-egg-yolk': 'egg-yolk',
  'kitchen-milk-whole': 'milk-whole',
  'kitchen-cream-35': 'cream-heavy',
  'kitchen-cream-48': 'cream-heavy',
  'kitchen-butter-unsalted': 'butter-unsalted',
  'kitchen-butter-salted': 'butter-salted',
  'kitchen-bread-white': 'bread-white',
  'kitchen-salmon': 'salmon-atlantic-farmed',
  'kitchen-trout': 'trout-rainbow-farmed',
  'kitchen-white-fish': 'cod-atlantic',
  'kitchen-shallot-sweated': 'shallot',
  'kitchen-carrot-blanched': 'carrot',
  'kitchen-spinach-blanched': 'spinach',
  'kitchen-chestnut-roasted': 'chestnut-raw',
  'kitchen-brandy': 'fr-brandy',
};
