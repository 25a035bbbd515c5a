/**
 * What the compression of share links, version 1, may point back to: words and runs that most batches hold. Both ends must
 * have the very same text, so it is never changed; a better one would be version 2 beside it.
 */
export const SHARE_DICTIONARY_1: string = [
  'discard|release|hold|reheat|checked|made|verified|percent-of-meat|percent-of-total|curing-salt|linin',
  'g|panade|offal|half-cylinder|cylinder|oval|roof|tapered|rectangular|bacon|caul|film|parchment|leaf|s',
  'moke|cook|chill|country-terrine|en-croute|us-federal|us-food-code|eu|gb|Europe/Paris|Europe/London|A',
  'merica/Chicago|Asia/Tokyo|Curing salt|centre|core|probe|Salt|kitchen-|Pepper, ground|pepper-white|pe',
  'pper-black|ginger|mace|juniper|allspice|thyme|bay|nutmeg|clove|garlic|shallot|parsley|milk|cream|egg',
  '|white|yolk|wine|brandy|stock|Pork belly|chicken|rabbit|duck|venison|veal|back fat, rindless|pork-ba',
  'ckfat|pork-shoulder, lean|trimmed|liver|seasoning|garnish|liquid|fat|lean|lean|fat|liver|egg|liquid|',
  'garnish|garnish|seasoning|seasoning|seasoning|salt|seasoning|[5,"2026-01-01T09:15:00+01:00","30 20 1',
  '5 10 10 10 5 5 5 2 1 1 20 20 30 30"]72.0|71.5|70.9|68.7|64.9|60.6|55.6|50.7|46.6|43.1|39.5|36.2|33.5',
  '|30.7|28.2|26.1|24.1|22.5|20.4|19.1|17.7|16.1|15.2|14.0|12.5|9.6|8.2|4.8|3.9[2,3,[[9],[1,2,4,"a|b",[',
  '3,""],"lean|fat",[3,null],[3,[12,"","g","default"]],[3,"mass"],[3,[12,"","g","default"]],[3,""],[3,[',
  '15,[12,"","%","default"],[12,"","%","default"],[12,"","%","default"],[12,"","%","default"]]],[3,null',
  '],[3,[12,"","ppm","default"]]],[9]],[]][2,0,[2,"x",false,"2026-01-01T07:10:00+01:00","2026-01-01T07:',
  '10:00+01:00","Europe/Paris",[11,"","20260101-A","",[12,"","count","default"],"",[12,"","g","default"',
  '],""],[13,null,[0,[14,"s","","curing-salt",null,[12,"","g","default"],"mass",[12,"","g","default"],"',
  '",[15,[12,"","%","default"],[12,"","%","default"],[12,"","%","default"],[12,"","%","default"]],[16,[',
  '12,"","%","default"],[12,"","%","default"]],[12,"","ppm","default"]]],[12,"1.7","%","default"]],[17,',
  'null,[12,"","ppm","default"],[12,"","g","default"],"",""],[18,[0,[19,"m","","rectangular",[20,[12,""',
  ',"mm","default"],[12,"","mm","default"],[12,"","mm","default"],[12,"","mm","default"],[12,"","mm","d',
  'efault"],[12,"","mm","default"]],[12,"","mL","default"],[12,"10","mm","default"],"none",[12,"","mm",',
  '"default"],[12,"1","count","default"],[0]]],[12,"1.04","g/mL","default"]],[21,null,null,null,[1,2,12',
  ',"s|c","cook|chill",[3,[12,"","C","default"]],[4],[3,null],[4],[3,""]],[0,[23,"p","","m","",[12,"","',
  'dC","default"],[12,"","dC","default"],[1,2,14,"a|b",[5,"2026-01-01T07:10:00+01:00","60"],[1,2,2,"68|',
  '69",[3,"C"],[3,"entered"]],[5,"2026-01-01T07:10:00+01:00","60"],[3,""],[3,null]]]]],[26,[12,"","mm",',
  '"default"],[12,"","mm","default"],[12,"","kg","default"],[12,"","kPa","default"],null],[0],[0],"",[0',
  '],[0],[0],[0],[9],[9],[9],[9],[9],[9],[9],[9],[9],[9],[9],[9],[9],[9],[9],[9],[9]],[]]',
].join('');
