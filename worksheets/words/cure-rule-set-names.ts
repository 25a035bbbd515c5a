/** The curing rule sets by id, by whose rule they are. Their limits are fetched when wanted. */
export const CURE_RULE_SET_NAMES: readonly { value: string; label: string }[] = [
  { value: 'us-federal', label: 'United States, federal inspection' },
  { value: 'canada-federal', label: 'Canada, federal' },
  { value: 'great-britain', label: 'Great Britain' },
  { value: 'european-union-2025', label: 'European Union and Northern Ireland' },
  { value: 'australia-new-zealand', label: 'Australia and New Zealand' },
  { value: 'codex', label: 'Codex Alimentarius, a standard for trade between countries' },
];
