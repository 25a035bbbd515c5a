export const mgKgOn2 = (printed: string, formWords: string, basisWords: string, mark: string) =>
  `${printed} mg/kg ${formWords} on ${basisWords}${mark}`;
export const forWord2 = (text: string, printed: string) => `${text} for ${printed}`;
export const probeMustShow2 = (action: string) => `probe must show ${action}`;
export const mgKgOnTotal2 = (nitritePpmTotal: string) => `${nitritePpmTotal} mg/kg on total`;
