export const weightOf = (name: string) => `Weight of ${name}`;
export const figuresOffThePack = 'Figures off the pack';
