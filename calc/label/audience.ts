/** A line that a label or a shelf card carries for the people who eat it. */
export type AudienceWarning =
  | 'listeria'
  | 'vitamin-a'
  | 'nitrite-infants'
  | 'raw-dried'
  | 'game-shot'
  | 'cook-first'
  | 'alcohol';

/** What is known of the food. Null is not known, and warns. */
export interface AudienceFacts {
  readonly familyId: string | null;
  readonly liver: boolean | null;
  readonly nitrite: boolean | null;
  readonly game: boolean | null;
  readonly alcohol: boolean | null;
}

/** Sold raw, to be cooked by the buyer. */
const TO_COOK: readonly string[] = ['fresh-sausage', 'dry-bacon'];
/** Dried and eaten raw. */
const RAW_DRIED: readonly string[] = ['dried-muscle'];

/**
 * Lines for pregnant women, the old, infants and others. Pâté of meat, fish or vegetables, chilled sliced meat and
 * rillettes carry the one about Listeria; so does a food whose family nobody named. What is not known warns.
 */
export function audienceWarnings(facts: AudienceFacts): AudienceWarning[] {
  const { familyId } = facts;
  const toCook = familyId !== null && TO_COOK.includes(familyId);
  const warnings: AudienceWarning[] = [];
  if (toCook) warnings.push('cook-first');
  else warnings.push('listeria');
  if (facts.liver !== false) warnings.push('vitamin-a');
  if (facts.nitrite !== false) warnings.push('nitrite-infants');
  if (familyId !== null && RAW_DRIED.includes(familyId)) warnings.push('raw-dried');
  if (facts.game === true) warnings.push('game-shot');
  if (facts.alcohol === true) warnings.push('alcohol');
  return warnings;
}
