import 'astro';

declare module 'astro' {
  interface AstroClientDirectives {
    /** A worksheet that is made live when a batch lies on the device, else at the first touch. */
    'client:bench'?: boolean;
  }
}
