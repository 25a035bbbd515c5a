import type { Params } from '@larderwright/calc/findings';
import type {
  AudienceWarning,
  DeclaredFigure,
  EuRowId,
  LabelFindingId,
  UsRowId,
} from '@larderwright/calc/label';
import { fixedText } from '@larderwright/calc/quantities';
import type { Words } from './wording.ts';

/** What a figure is called where an input it needs is missing. */
export const labelFigureNames: Readonly<Record<string, string>> = {
  'label.name-of-food': 'the name of the food',
  'label.list': 'the order of the list',
  'label.nutrition': 'nutrition',
  'label.energy': 'energy',
  'label.panel': 'the panel per serving',
  'label.servings': 'servings in a pack',
  'label.use-by': 'the use-by date',
  'label.store-line': 'the storage line',
};

const number = (params: Params, key: string, decimals: number) => fixedText(Number(params[key]), decimals);
const percent = (params: Params, key: string, decimals = 1) => `${number(params, key, decimals)} %`;
const grams = (params: Params, key: string) => `${number(params, key, 0)} g`;

/** The words of every finding and verdict of the label. */
export const labelWords = {
  'label.name-without-meat': (p) => ({
    title: `The name does not say what animal it is: ${p.names}.`,
    body: 'A name that names the meat is safer to sell under. Some names are reserved by law: check yours.',
  }),
  'label.whole-bowl-filled': () => ({
    title: 'The whole bowl is taken to have gone into the moulds.',
    body: 'Mix left in the bowl or eaten as a test would count as water lost. Weigh what was filled.',
  }),
  'label.heavier-than-mix': (p) => ({
    title: `The food weighs ${grams(p, 'finishedG')}, more than the ${grams(p, 'ingoingG')} that went in.`,
    body: 'Jelly, crust or a lining may be missing from the list. Check both weights.',
  }),
  'label.juices-lost': () => ({
    title: 'Juices ran off, and nobody knows what was in them.',
    body: 'Nutrition cannot be worked out from the formula. Have the food analysed.',
  }),
  'label.made-of-unknown': (p) => ({
    title: `${p.name} is made of several things. They stand on its pack.`,
    body: 'Copy them in the order of the pack. Allergens and preservatives hide there.',
  }),
  'label.curing-salt-unsplit': (p) => ({
    title: `The strength of ${p.name} is not known.`,
    body: 'It is listed whole, and its sodium is missing from the salt figure. Type what the pack declares into the formula.',
  }),
  'label.cure-not-listed': (p) => ({
    title: `Salt, sugar${p.nitrite === 'yes' ? ', nitrite' : ''} and water of the brine or dry cure are not in this list.`,
    body: 'The formula holds the bare meat. Add below what the meat took up, with its weight, its salt and what it is made of. Until then salt is left open.',
  }),
  'label.nitrite-named': () => ({
    title: 'Nitrite is in this food and is named as a preservative.',
    body: 'Never leave it out of the list, however little it is.',
  }),
  'label.allergen-unknown': (p) => ({
    title: `Nobody has said which allergens are in ${p.name || 'this ingredient'}.`,
    body: 'Read the pack and tick them. If there are none, say so.',
  }),
  'label.allergen-to-check': (p) => ({
    title: `${p.name} may hold ${p.allergens}: that depends on the maker.`,
    body: 'Read the pack and tick what is in it. If there is none, say so.',
  }),
  'label.allergens-told': () => ({
    title: 'Allergens are told for every ingredient.',
    body: 'They are only as good as the packs they were read from. Other foods in the same kitchen are not in this list.',
  }),
  'label.allergens-open': (p) => ({
    title:
      Number(p.count) > 0
        ? `Allergens are not known for certain: ${p.names}.`
        : 'Allergens are not known for certain.',
    body: 'Do not sell as free of anything. Read the packs.',
  }),
  'label.crust-not-counted': (p) => ({
    title:
      p.what === 'crust'
        ? 'The crust is not in the list.'
        : 'The moulds are lined with food that is not in the list.',
    body: 'Measure it on its own worksheet, or add it below with its weight and what it is made of: flour, egg and milk are allergens.',
  }),
  'label.told-twice': (p) => ({
    title: `${p.name} comes with the batch, and “${p.twin}” stands in the list too.`,
    body: 'If the two are one thing it is counted twice: remove the one you wrote, or type 0 as the weight of the other.',
  }),
  'label.kitchen-figures': (p) => ({
    title: `Nutrition leans on rounded figures of the kitchen for ${Number(p.count) > 4 ? `${p.count} ingredients` : p.names}.`,
    body: 'They are within 3 points or so. What they do not give comes from the nearest row of the published table. Good for planning; print figures from suppliers or an analysis.',
  }),
  'label.small-blanks': (p) => ({
    title: `Too little to matter, and not fully known: ${p.names}.`,
    body: 'Less than a thousandth of the whole. What the table does not give of it was left out.',
  }),
  'label.meat-limit-unknown': (p) => ({
    title: `Cannot tell how much of the ${p.name} counts as meat: ${p.what} not known.`,
    body: 'Fat and connective tissue count only up to a limit. Type the collagen from an analysis, or choose a published cut.',
  }),
  'label.over-meat-limits': (p) => ({
    title: `${percent(p, 'declarablePercent')} of the ${p.name} counts as meat.`,
    body: `The rest is listed by its own name: fat ${percent(p, 'fatPercent')}, connective tissue ${percent(p, 'tissuePercent')} of it.`,
  }),
  'label.quantities-in-grams': () => ({
    title: 'The shares pass 100 %, so grams used for 100 g of the food stand in their place.',
    body: 'That is what the law asks of foods that lose weight.',
  }),
  'label.added-water': (p) => ({
    title: `Added water is ${percent(p, 'percent')} of the food: the name must say so.`,
    body: 'For what looks like a cut, joint or slice of meat or fish, above 5 %. From memory: check the current text.',
  }),
  'label.susceptible-audience': () => ({
    title: 'Stop: not for hospitals, care homes or others at high risk without a plan of their own.',
    body: 'Listeria grows in the cold. Ask your authority before you serve this to them.',
  }),
  'label.nitrite-for-infants': () => ({
    title: 'Stop: food with nitrite is not for children under three.',
    body: 'If nobody knows whether there is nitrite in it, it counts as if there were.',
  }),
  'label.best-before': () => ({
    title: 'Stop: a chilled food of this kind carries a use-by date, not a best-before.',
    body: 'After a use-by date it is not safe, even if it looks good.',
  }),
  'label.sealed-too-long': (p) => ({
    title: `Stop: ${number(p, 'days', 0)} days sealed without air; at most ${number(p, 'limitDays', 0)} without a proven hurdle.`,
    body: 'Botulism can grow in the cold. A hurdle is 90 °C (194 °F) for 10 minutes, 3.5 % salt on water, water activity 0.97, or pH 5.',
  }),
  'label.hurdle-salt-short': (p) => ({
    title:
      p.known === 'yes'
        ? `Stop: salt on water may be only ${number(p, 'saltPercent', 2)} %; the hurdle needs ${number(p, 'limitPercent', 1)} %.`
        : `Stop: salt on water is not known; the hurdle needs ${number(p, 'limitPercent', 1)} %.`,
    body: 'It must reach that in every part of the food.',
  }),
  'label.past-seven-days': (p) => ({
    title: `${number(p, 'days', 0)} days is past the ${number(p, 'limitDays', 0)} days of the Food Code.`,
    body: 'Food made and sold on site: seven days at 5 °C (41 °F) or colder, the day of the cook among them.',
  }),
  'label.stored-warm': (p) => ({
    title: `Kept at up to ${number(p, 'storeC', 1)} °C. This trade keeps at ${number(p, 'limitC', 0)} °C (41 °F) or colder.`,
    body: 'Your law may allow more. Listeria does not ask.',
  }),
  'label.packing-moves-nothing': (p) => ({
    title: `Packed on ${p.packedOn}, and still counted from the cook on ${p.cookedOn}.`,
    body: 'Slicing, packing or packing again never starts a new clock.',
  }),
  'label.two-cook-dates': (p) => ({
    title: `The log says the cook was on ${p.logged}, you typed ${p.typed}.`,
    body: 'The earlier one counts. Clear the one that is wrong.',
  }),
  'label.date-agrees': (p) => ({
    title: `Use by ${p.written} is within the life from the cook.`,
    body: 'The life itself is your plan’s: this worksheet proves none.',
  }),
  'label.date-too-late': (p) => ({
    title: `Use by ${p.written} is too late: counted from the cook it is ${p.counted}.`,
    body: 'Correct it on the batch sheet and on every pack.',
  }),
  'label.life-is-default': (p) => ({
    title: `The life of ${number(p, 'days', 0)} days is a default, not your plan’s.`,
    body: 'Type the life your plan sets. Then the date on the batch sheet can be judged.',
  }),
  'label.date-unknown': (p) => ({
    title: p.counted
      ? `Counted from the cook: ${p.counted}. No date to compare is on the batch sheet.`
      : 'No use-by date can be counted.',
    body: p.counted ? 'Write it there as year, month, day.' : 'The day of the cook or the life is missing.',
  }),
} satisfies Words<LabelFindingId>;

/** What the United States panel calls its lines. */
export const US_ROW_NAMES: Readonly<Record<UsRowId, string>> = {
  energy: 'Calories',
  fat: 'Total fat',
  saturates: 'Saturated fat',
  cholesterol: 'Cholesterol',
  sodium: 'Sodium',
  carbohydrate: 'Total carbohydrate',
  fibre: 'Dietary fiber',
  sugars: 'Total sugars',
  addedSugars: 'Added sugars',
  protein: 'Protein',
  vitaminD: 'Vitamin D',
  calcium: 'Calcium',
  iron: 'Iron',
  potassium: 'Potassium',
};

/** What the European table calls its lines. */
export const EU_ROW_NAMES: Readonly<Record<EuRowId, string>> = {
  energyKj: 'Energy, kJ',
  energyKcal: 'Energy, kcal',
  fat: 'Fat',
  saturates: 'of which saturates',
  carbohydrate: 'Carbohydrate',
  sugars: 'of which sugars',
  fibre: 'Fibre',
  protein: 'Protein',
  salt: 'Salt',
};

/** Lines for those who eat it. Sentences of our own: use those of your authority where it has any. */
export const WARNING_WORDS: Readonly<Record<AudienceWarning, string>> = {
  listeria: 'Not for pregnant women, babies, people over 65 or people with weak immunity (Listeria).',
  'vitamin-a': 'Contains liver, rich in vitamin A: not in pregnancy.',
  'nitrite-infants': 'Contains nitrite: not for children under three.',
  'raw-dried': 'Raw: not in pregnancy, and not for people with weak immunity.',
  'game-shot': 'Game: may hold shot. Lead shot is not for young children or in pregnancy.',
  'cook-first': 'Raw: cook through before eating. Keep apart from food that is ready to eat.',
  alcohol: 'Contains alcohol.',
};

/** A figure as it is printed. */
export function figureText(figure: DeclaredFigure | null): string {
  if (figure === null) return 'CANNOT TELL';
  const unit = figure.unit;
  if (figure.lessThan === null) return `${figure.digits} ${unit}`;
  if (figure.value === null) return `less than ${figure.lessThan} ${unit}`;
  return `0 or <${figure.lessThan} ${unit}`;
}

/** How each figure of a label is worked out. */
export const labelWorkings = {
  storageLine:
    'The temperature you wrote, cut down to a whole degree on the other scale. 3 °C is common practice, no source; the law of your place may allow more.',
  netWeight:
    'What a pack weighs without its wrapping, rounded down, never up; ounces first for the United States (21 CFR 101.7, from memory).',
  price:
    'The whole cost shared among what is sold, priced as the plan says, by the slicing worksheet; a pound is 0.45359237 kg. Derived.',
  crust:
    'Sheets as they are cut × thickness × density, all moulds, by the crust worksheet; decoration and what is rolled to spare are not counted. A usual paste is counted with wheat flour, whole egg and vinegar; its fat as butter and lard in equal parts, or lard alone in a hot-water paste. Common practice, no source: write what yours is made of. Figures per 100 g from the composition table (USDA SR 28, 2016).',
  jelly:
    'Liquid and gelatine or agar of the jelly worksheet; a millilitre of liquid is taken as a gram (common practice, no source). What the stock holds is not known here: write it, with its figures.',
  list: 'Weights as they went in, most first. Of the mix, the part that went into the moulds. The same name is put together. A curing salt is listed as its salt and its preservatives. Regulation (EU) No 1169/2011, Annex VII part A; 21 CFR 101.4(a).',
  quantities:
    'Weight used ÷ weight of the finished food; ÷ everything that went in where nothing was lost. Over 100 %, alone or together: grams used for 100 g. Regulation (EU) No 1169/2011, Annex VIII.',
  meat: 'Excess connective tissue (excess collagen × 37 ÷ 8) comes off first, then the fat above its share of what is left. Fat at most 30 % in pork, 15 % in birds and rabbit, 25 % in other mammals; collagen at most 25 % of meat protein, 10 % in birds and rabbit. Regulation (EU) No 1169/2011, Annex VII part B; guidance notes of the Food Standards Agency, September 2003. The allowance for collagen is from memory.',
  eu: 'What the ingredients bring ÷ the finished weight. Energy: fat 37 kJ and 9 kcal a gram, carbohydrate without fibre and protein 17 and 4, fibre 8 and 2, alcohol 29 and 7. Protein is nitrogen × 6.25. Salt is all sodium × 2.5. Regulation (EU) No 1169/2011, Annexes I and XIV; rounded by the Commission’s guidance of December 2012.',
  us: 'The same, for one serving. Calories are 4 for protein, 4 for total carbohydrate, 9 for fat, 7 for alcohol. 21 CFR 101.9(c); per cent of daily value from the exact amount. The older daily values still stood in 9 CFR 317.309 when last looked at.',
  water:
    'Finished weight less everything that went in but water, ÷ finished weight. Regulation (EU) No 1169/2011, Annex VII part A.',
  useBy:
    'Day of the cook plus the life. With the day of the cook as day one, one day less. Packing moves nothing. The length of life is your plan’s. United States Food Code 3-501.17 counts the day of the cook; the rest is derived.',
  servings:
    'Net weight ÷ serving; whole above 5, halves below, “about” when rounded. Guide to nutrition labeling, attachment 6.',
} as const;
