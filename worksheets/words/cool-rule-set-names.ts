/** The cooling rule sets by id, by whose rule they are. Their legs are fetched when wanted. */
export const COOL_RULE_SET_NAMES: readonly { value: string; label: string }[] = [
  { value: 'uk-large-uncured', label: 'United Kingdom and Australia, trade: large cooked meats, uncured' },
  { value: 'uk-large-cured', label: 'United Kingdom and Australia, trade: large cooked meats, cured' },
  { value: 'uk-retail-under-5kg', label: 'United Kingdom, retail meat trade: pieces under 5 kg' },
  { value: 'us-food-code', label: 'United States, retail and restaurants: Food Code' },
  { value: 'au-nz-3.2.2', label: 'Australia and New Zealand: Standard 3.2.2' },
  { value: 'ca-food-service', label: 'Canada, provinces: food service, typical' },
  { value: 'fr-catering', label: 'France: retail and catering' },
  { value: 'us-fsis-1', label: 'United States, federal plants: option 1, any cooked product' },
  { value: 'us-fsis-2', label: 'United States, federal plants: option 2, any cooked product' },
  { value: 'us-fsis-3-cured', label: 'United States, federal plants: option 3, cured' },
  { value: 'us-slow-20-cured', label: 'United States, California: slow cooling, cured or dry' },
];
