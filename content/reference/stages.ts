import type { FigureId } from '../figures/index.ts';

/** A temperature of the work: what is held, the figure, what acts on it, and why. */
export interface StageTemp {
  readonly id: string;
  readonly stage: string;
  readonly aim: FigureId;
  /** Beyond this something is done about it. */
  readonly act?: FigureId;
  readonly why: string;
}

export interface StageGroup {
  readonly id: string;
  readonly title: string;
  readonly note: string;
  readonly stages: readonly StageTemp[];
}

/** Temperatures from the door to the plate. Figures stand in content/figures and nowhere else. */
export const STAGE_GROUPS: readonly StageGroup[] = [
  {
    id: 'receive-and-keep',
    title: 'Receive and keep raw',
    note: 'Read between packs and in the core, with a probe that was checked today.',
    stages: [
      {
        id: 'receive-poultry',
        stage: 'Poultry at the door',
        aim: 'receive-poultry',
        why: 'Salmonella and Campylobacter wait in the cold.',
      },
      {
        id: 'receive-offal',
        stage: 'Liver and other offal at the door',
        aim: 'receive-offal',
        why: 'It spoils first.',
      },
      {
        id: 'receive-red',
        stage: 'Red meat at the door',
        aim: 'receive-red',
        why: 'Above it drip and slime begin.',
      },
      {
        id: 'raw-store',
        stage: 'Raw store',
        aim: 'raw-store',
        act: 'chill-limit',
        why: 'Each few degrees warmer halve the life.',
      },
      {
        id: 'frozen-store',
        stage: 'Frozen store',
        aim: 'frozen-store',
        why: 'Nothing grows, and fat goes rancid slowly.',
      },
      {
        id: 'room-cutting',
        stage: 'Cutting room',
        aim: 'room-cutting',
        why: 'The meat warms slowly while it is worked.',
      },
      {
        id: 'cure-room',
        stage: 'Curing room',
        aim: 'cure-room',
        why: 'Salt is slow, so the cold must hold until it arrives.',
      },
    ],
  },
  {
    id: 'grind-and-mix',
    title: 'Grind and mix',
    note: 'Quality, and safety by the way: what is cold enough to bind is too cold to grow much.',
    stages: [
      {
        id: 'temper-meat',
        stage: 'Meat before the grinder',
        aim: 'meat-temper',
        why: 'Crisp edges cut clean.',
      },
      {
        id: 'temper-fat',
        stage: 'Fat before the grinder',
        aim: 'fat-temper',
        why: 'Fat stays in grains and does not smear.',
      },
      {
        id: 'machine',
        stage: 'Bowl, plate, knife',
        aim: 'machine-cold',
        why: 'Warm iron melts the first fat it meets.',
      },
      {
        id: 'liquids',
        stage: 'Panade, stock, onions at mixing',
        aim: 'liquid-cold',
        act: 'panade-warm',
        why: 'One warm part warms the whole.',
      },
      {
        id: 'after-pass',
        stage: 'After each pass: stop',
        aim: 'grind-stop',
        act: 'grind-remove',
        why: 'Each pass warms the mix.',
      },
      {
        id: 'end-coarse',
        stage: 'Coarse mix, at the end',
        aim: 'mix-end-country',
        why: 'Pork fat softens above it.',
      },
      {
        id: 'end-fine',
        stage: 'Fine mix, at the end',
        aim: 'mix-end-fine',
        why: 'More surface, less room for error.',
      },
      {
        id: 'end-mousseline',
        stage: 'Mousseline, at the end',
        aim: 'mix-end-mousseline',
        why: 'Warm cream lets go of its fat.',
      },
      {
        id: 'end-batter',
        stage: 'Sausage batter, pork or poultry',
        aim: 'batter-end',
        why: 'Above it the batter breaks in the cook.',
      },
      {
        id: 'end-batter-beef',
        stage: 'Sausage batter, beef',
        aim: 'batter-end-beef',
        why: 'Beef fat is harder and bears more.',
      },
    ],
  },
  {
    id: 'bath-oven-poach',
    title: 'Bath, oven and poaching water',
    note: 'What surrounds the food. The core is another number.',
    stages: [
      {
        id: 'bath-smooth',
        stage: 'Bath for parfait and mousseline',
        aim: 'bath-smooth',
        act: 'bath-curdle',
        why: 'Egg and liver curdle in hotter water.',
      },
      {
        id: 'bath-country',
        stage: 'Bath for country and straight work',
        aim: 'bath-country',
        act: 'bath-act',
        why: 'Hotter water makes a wide grey ring, and fat runs.',
      },
      {
        id: 'oven-bath',
        stage: 'Oven around a covered bath',
        aim: 'oven-bath',
        why: 'It feeds the bath what the bath loses.',
      },
      {
        id: 'poach',
        stage: 'Poaching water',
        aim: 'poach-water',
        act: 'poach-bursts',
        why: 'The skin holds while the inside sets.',
      },
      {
        id: 'smoke-cook',
        stage: 'Air of a smoke-cook, in steps',
        aim: 'cooked-smoke',
        why: 'The skin dries before it is hot.',
      },
      {
        id: 'crust-first',
        stage: 'Oven for a crust, first',
        aim: 'bake-first',
        why: 'Pastry sets before the filling weeps.',
      },
      {
        id: 'crust-then',
        stage: 'Oven for a crust, then',
        aim: 'bake-then',
        why: 'The core catches up without burning.',
      },
    ],
  },
  {
    id: 'core',
    title: 'Core, for the texture',
    note: 'Quality only. Each must also meet the cooking limit of your rule set, whichever is higher.',
    stages: [
      {
        id: 'core-parfait',
        stage: 'Poultry-liver parfait sets',
        aim: 'parfait-sets',
        act: 'parfait-curdles',
        why: 'Hold it for the rule, in a bath that cannot curdle it.',
      },
      {
        id: 'core-fish',
        stage: 'Fish mousseline',
        aim: 'mousseline-core-fish',
        act: 'mousseline-grainy',
        why: 'White of egg sets here.',
      },
      {
        id: 'core-mousseline',
        stage: 'Meat mousseline',
        aim: 'mousseline-core-meat',
        act: 'mousseline-grainy',
        why: 'Wetter below, grainy above.',
      },
      {
        id: 'core-country',
        stage: 'Country terrine',
        aim: 'core-country',
        why: 'Liver and egg are set, juice still held.',
      },
      {
        id: 'core-liver',
        stage: 'Anything with pork liver',
        aim: 'hev-temp',
        why: 'Held as the advice on hepatitis E says.',
      },
      {
        id: 'core-crust',
        stage: 'Pâté in crust, after carry-over',
        aim: 'crust-core',
        why: 'The crust goes on driving heat in.',
      },
      {
        id: 'core-roll',
        stage: 'Galantine and ballotine',
        aim: 'roll-core',
        why: 'Mostly birds: the rule leads.',
      },
      { id: 'core-ham', stage: 'Cooked ham', aim: 'ham-core', why: 'The muscles bind and slice.' },
      { id: 'core-sausage', stage: 'Cooked sausage', aim: 'cooked-core', why: 'Skin and fat hold.' },
      {
        id: 'core-blood',
        stage: 'Blood pudding',
        aim: 'blood-core',
        act: 'blood-crumbles',
        why: 'Blood sets, and crumbles when hotter.',
      },
      {
        id: 'core-rillettes',
        stage: 'Rillettes',
        aim: 'rillettes-cook',
        why: 'Collagen turns to gelatine over hours.',
      },
      { id: 'core-confit', stage: 'Confit', aim: 'confit-cook', why: 'Tender, and still in one piece.' },
      { id: 'core-brawn', stage: 'Brawn meats', aim: 'brawn-cook', why: 'Skin and sinew must melt.' },
    ],
  },
  {
    id: 'press-jelly-chill',
    title: 'Press, jelly, chill and serve',
    note: 'The chill itself is judged leg by leg: see the cooling windows.',
    stages: [
      {
        id: 'press-on',
        stage: 'Core when the press goes on',
        aim: 'press-start',
        why: 'Fat is soft enough to close the gaps, not so hot that it runs.',
      },
      {
        id: 'jelly-pour',
        stage: 'Jelly when it is poured',
        aim: 'jelly-pour',
        why: 'Hotter jelly melts the fat of the face.',
      },
      { id: 'jelly-sets', stage: 'Jelly sets', aim: 'jelly-sets', why: 'By its strength and its bloom.' },
      {
        id: 'jelly-melts',
        stage: 'Jelly melts',
        aim: 'jelly-melts',
        why: 'It melts on the tongue, and on a warm buffet.',
      },
      {
        id: 'crust-jelly',
        stage: 'Pie when its jelly goes in',
        aim: 'crust-jelly-core',
        why: 'Warm jelly warms a cooling pie.',
      },
      {
        id: 'store',
        stage: 'Store, ready to eat',
        aim: 'chill-aim',
        act: 'chill-limit',
        why: 'Listeria still grows at the aim, slowly.',
      },
      {
        id: 'store-sealed',
        stage: 'Store, sealed without air',
        aim: 'sealed-chill',
        why: 'Cold-growing botulinum.',
      },
      { id: 'cut', stage: 'Terrine when it is cut', aim: 'cut-temp', why: 'Cold fat cuts clean.' },
      {
        id: 'serve-parfait',
        stage: 'Parfait when it is served',
        aim: 'parfait-serve',
        why: 'Butter softens.',
      },
      {
        id: 'serve-terrine',
        stage: 'Terrine when it is served',
        aim: 'serve-terrine',
        why: 'Cold dulls salt and spice.',
      },
      {
        id: 'serve-crust',
        stage: 'Pâté in crust when it is served',
        aim: 'crust-serve',
        why: 'The crust eats better less cold.',
      },
      {
        id: 'serve-rillettes',
        stage: 'Rillettes when they are served',
        aim: 'rillettes-serve',
        why: 'They must spread.',
      },
      {
        id: 'serve-roll',
        stage: 'Galantine when it is served',
        aim: 'roll-serve',
        why: 'Lean slices dry fast.',
      },
    ],
  },
];
