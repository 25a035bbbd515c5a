/** What an example batch teaches, for the page that lists them. What it comes to is computed, never written here. */
export interface DemoLesson {
  /** Slug of the batch. */
  readonly slug: string;
  readonly teaches: readonly string[];
  /** What to change, to see the verdict move. */
  readonly tryThis: string;
}

export const DEMO_LESSONS: readonly DemoLesson[] = [
  {
    slug: 'country-terrine',
    teaches: [
      'Carry-over counts only while it is logged. The limit was completed on the rack, and the readings show it.',
      'One log gives different answers under different cooling rules. You choose one, and it is printed.',
      'Nitrite differs on the meat block and on the whole mix. The rule says which counts.',
    ],
    tryThis: 'Take the readings after the bath out of the cook log, or choose another cooling rule.',
  },
  {
    slug: 'liver-parfait',
    teaches: [
      'A time on a card belongs to one mould. A deeper mould needs far longer, and the probe says so.',
      'Touching a limit is not meeting it. The hold is counted on readings, from the first to the last.',
      'Poultry liver keeps its rule whatever the colour. Its fat lies beyond every column of the poultry table.',
    ],
    tryThis: 'Take out every reading after half past two, as if the card had been believed.',
  },
  {
    slug: 'pate-en-croute-cooling-fails',
    teaches: [
      'A good cook does not save a bad chill. Each leg of the cooling stands alone.',
      'A crust, a mould and a loaded shelf keep heat in. The bench before them cost an hour.',
      'A gap in the night is not bridged. What nobody read cannot be shown.',
    ],
    tryThis: 'Choose another cooling rule. No rule passes this log.',
  },
  {
    slug: 'mutton-ham',
    teaches: [
      'A probe found wrong afterwards corrects every reading it gave. The batch waits on hold meanwhile.',
      'Cured limits are open only to what is cured to its core. Here the needle took the brine there.',
      'The same readings do not show the cooling that uncured food needs. They were taken too far apart to tell.',
    ],
    tryThis:
      'Choose the limit one step hotter, or the first cooling option for any product. Then set the offset to nothing.',
  },
  {
    slug: 'trout-mousseline',
    teaches: [
      'A thin bar heats and cools fast. That is the cheapest safety there is.',
      'High above the sea, bubbles tell nothing of the bath. A thermometer does.',
      'The hold was completed after the bath, and would have failed in ice.',
    ],
    tryThis: 'Take out the readings after the bath.',
  },
];
