/** What a page that came over plain http says of itself: what a browser keeps for pages it can trust to come from where they say. */
export const PLAIN_HTTP =
  'This page came over plain http. Missing here: work without a network, a screen that stays awake, the browser’s promise to keep your batches, and notices outside the page. All else works. Back up more often.';
