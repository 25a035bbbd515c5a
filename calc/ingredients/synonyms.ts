/**
 * What is said at the bench, and the words the tables use for it. Several words to one line: any of the first finds
 * any of the second.
 */
export const KITCHEN_SYNONYMS: readonly (readonly [said: readonly string[], written: readonly string[]])[] = [
  [
    ['fatback', 'backfat', 'bard', 'lardo', 'speck'],
    ['back fat', 'backfat'],
  ],
  [
    ['butt', 'collar', 'neck'],
    ['boston butt', 'neck end', 'shoulder'],
  ],
  [['hand', 'picnic'], ['arm picnic']],
  [
    ['streaky', 'rasher', 'lardons', 'poitrine'],
    ['bacon', 'lardon', 'belly'],
  ],
  [['gammon', 'jambon'], ['ham']],
  [
    ['throat', 'cheek', 'jowls', 'gorge'],
    ['jowl', 'throat', 'cheek'],
  ],
  [
    ['rind', 'skin', 'couenne'],
    ['skin', 'rind'],
  ],
  [
    ['trotter', 'trotters', 'foot', 'feet'],
    ['trotters', 'feet', 'foot'],
  ],
  [['flare', 'leaf'], ['leaf']],
  [['melt', 'milt'], ['spleen']],
  [['sweetbreads', 'ris'], ['sweetbread']],
  [
    ['chitterlings', 'tripe'],
    ['chitterlings', 'tripe', 'stomach'],
  ],
  [
    ['hogget', 'mutton', 'sheep'],
    ['lamb', 'mutton'],
  ],
  [['ox', 'cow', 'bullock'], ['beef']],
  [
    ['deer', 'roe', 'stag', 'game'],
    ['deer', 'venison', 'elk', 'caribou', 'hare', 'wild boar'],
  ],
  [['squab', 'dove'], ['pigeon']],
  [
    ['fowl', 'hen', 'poulet'],
    ['chicken', 'guinea fowl'],
  ],
  [['magret', 'canard'], ['duck']],
  [['fatted', 'foie'], ['foie gras']],
  [
    ['prawns', 'prawn', 'shrimps', 'shrimp'],
    ['prawn', 'shrimp'],
  ],
  [['flounder', 'plaice', 'sole'], ['flatfish']],
  [
    ['scallops', 'mussels', 'oysters'],
    ['scallop', 'mussel', 'oyster'],
  ],
  [['double', 'whipping', 'heavy'], ['cream']],
  [['yolk', 'white', 'eggs'], ['egg']],
  [
    ['rusk', 'crumb', 'crumbs'],
    ['breadcrumbs', 'bread'],
  ],
  [
    ['cornflour', 'maize'],
    ['corn', 'maize'],
  ],
  [['gelatine', 'aspic'], ['gelatin']],
  [
    ['soy', 'soya'],
    ['soya', 'soy'],
  ],
  [['spring', 'scallion', 'scallions'], ['spring onion']],
  [['cep', 'porcini', 'mushrooms'], ['mushroom']],
  [
    ['girolle', 'chanterelle'],
    ['girolle', 'chanterelle'],
  ],
  [['cilantro'], ['coriander leaf']],
  [['capsicum', 'bell'], ['sweet pepper']],
  [
    ['sultana', 'sultanas', 'raisins'],
    ['raisin', 'golden'],
  ],
  [['plum', 'prunes'], ['prune']],
  [['filbert', 'cobnut'], ['hazelnut']],
  [['marron', 'chestnuts'], ['chestnut']],
  [
    ['gherkin', 'gherkins', 'cornichons'],
    ['cornichon', 'pickle'],
  ],
  [['pimento', 'jamaica'], ['allspice']],
  [['quatre', 'four'], ['quatre-epices']],
  [
    ['pink', 'cure', 'nitrite', 'saltpetre'],
    ['curing salt', 'nitrite', 'nitrate'],
  ],
  [['zest'], ['peel', 'zest']],
  [['broth', 'bouillon', 'fumet'], ['stock']],
  [
    ['port', 'madeira', 'sherry', 'marsala'],
    ['fortified', 'dessert'],
  ],
  [
    ['cognac', 'armagnac', 'rum', 'whisky', 'gin'],
    ['brandy', 'spirit'],
  ],
  [['canola', 'rape'], ['rapeseed']],
  [['caster', 'icing', 'granulated'], ['sugar']],
  [
    ['glucose', 'dextrose'],
    ['dextrose', 'corn syrup'],
  ],
];
