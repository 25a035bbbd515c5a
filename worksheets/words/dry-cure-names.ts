import type { DryCureMethod } from '@larderwright/calc/dry-cure';

/** Ways of a dry cure. */
export const DRY_CURE_METHODS: Readonly<Record<DryCureMethod, string>> = {
  equilibrium: 'Weighed cure in a closed bag, all of it goes in',
  'salt-box': 'Buried in salt',
  rub: 'Rubbed with a mix, more than goes in',
};
