import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';

/** Broken rules, each with the elements that break it. All rules are tried, on the whole page, unless told otherwise. */
export async function accessibilityFaults(
  page: Page,
  { rules, within }: { rules?: string[]; within?: string } = {},
): Promise<string[]> {
  const axe = new AxeBuilder({ page })
    // Elements that break nothing are not told of, which is most of the work. Nothing is fetched a second time: only
    // rules for sound and film would ask for it, and no page has either.
    .options({ resultTypes: ['violations'], preload: false })
    // Skips frames of other origins. No page has one: the policy of no foreign request sees to that.
    .setLegacyMode(true);
  if (rules) axe.withRules(rules);
  if (within) axe.include(within);
  const { violations } = await axe.analyze();
  return violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`,
  );
}
