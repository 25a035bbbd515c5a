/** The cooking rule sets by id, by whose rule they are. Their limits are fetched when wanted. */
export const COOK_RULE_SET_NAMES: readonly { value: string; label: string }[] = [
  { value: 'uk-advice', label: 'United Kingdom, advice: pairs equal to 70 °C for 2 min' },
  { value: 'uk-acmsf-2007', label: 'United Kingdom, expert committee 2007: E. coli in minced meat' },
  { value: 'us-food-code', label: 'United States, retail and restaurants: Food Code' },
  { value: 'us-fsis-meat-6.5', label: 'United States, federal plants: meat without poultry, 6.5-log' },
  { value: 'us-fsis-meat-7.0', label: 'United States, federal plants: meat without poultry, 7-log' },
  { value: 'us-fsis-poultry', label: 'United States, federal plants: with poultry, 7-log, by fat' },
  { value: 'ca-meat', label: 'Canada, federal plants: meat without poultry, 6.5-log' },
  { value: 'ca-poultry', label: 'Canada, federal plants: with poultry, 7-log, by fat' },
  { value: 'nz-card', label: 'New Zealand: poultry, minced meat and poultry liver' },
  { value: 'au-as4696', label: 'Australia: cooked meat' },
  { value: 'ie-cook-chill', label: 'Ireland: cook-chill' },
  { value: 'hev-advisory', label: 'Published trials, advice only: hepatitis E in food with pork liver' },
  { value: 'uk-90c-10min', label: 'United Kingdom: chilled vacuum packs, 90 °C for 10 min' },
  { value: 'us-90c-10min', label: 'United States, fishery guidance: 90 °C for 10 min' },
];
