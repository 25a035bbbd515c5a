/** What nobody told us or we could not find. What rests on memory is read from the register, not written here. */
const unknown: readonly { readonly about: string; readonly text: string }[] = [
  {
    about: 'A terrine in a water bath',
    text: 'We found no published curve of the core of a terrine that cooks in a bath, with its size and its water described. The forecast is checked on other shapes, and on slabs, rolls and sausages that were measured. Put a probe in yours.',
  },
  {
    about: 'Cooling under a press',
    text: 'We found no measured cooling of a pressed terrine. The press and its board are taken as a layer that slows the cold.',
  },
  {
    about: 'Films of air and water',
    text: 'How well air or water takes heat to or from your mould depends on your oven, your bath and your cold room. We take ranges from books. A log of your own kitchen outranks them.',
  },
  {
    about: 'Food that was described too little',
    text: 'Some published trials of hams and roasts give no size, or no speed of air. We list them on the page beside this one, and hold our forecast to none of them.',
  },
  {
    about: 'Salt on its way into meat',
    text: 'We read no single number for how fast salt moves in cold meat. The times are ranges and habits. Weigh, wait, and test a slice.',
  },
  {
    about: 'Nitrite that is left',
    text: 'What remains of the nitrite you weighed in depends on acid, heat and time. We compute what goes in. We do not promise what is left.',
  },
  {
    about: 'Nitrate',
    text: 'No dose of nitrate is computed anywhere, for no product. That is a choice and stays one.',
  },
  {
    about: 'Growth in your product',
    text: 'The growth figures come from a few foods and broths. A fine result of theirs makes nothing safe. Only a limit kept, and read on a probe, counts as a pass.',
  },
  {
    about: 'Keeping time',
    text: 'No date of use is computed. It needs a study of your own product, in your own kitchen, by somebody who may say so.',
  },
  {
    about: 'Your law',
    text: 'Few countries stand in our tables, and laws change. We name the edition we compared. Your own authority rules, and a missing rule set does not mean a missing rule.',
  },
  {
    about: 'Every check by the same hands',
    text: 'No licensed process authority has reviewed this site. What you see is arithmetic with its sources beside it.',
  },
];
export default unknown;
