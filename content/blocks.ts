/** The teaching blocks, in order. A technique names its block; its number gives the place inside. */
export const BLOCKS = [
  { id: 'foundations', title: 'Foundations' },
  { id: 'core', title: 'Core processes' },
  { id: 'forcemeat', title: 'Forcemeat products' },
  { id: 'cured', title: 'Sausages and cures' },
  { id: 'serve', title: 'Serve, sell, manage' },
] as const;
