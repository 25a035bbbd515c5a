import Caution from '../components/Caution.astro';
import Fig from '../components/Fig.astro';
import Method from '../components/Method.astro';
import Sign from '../components/Sign.astro';
import WorksheetHere from '../components/WorksheetHere.astro';

/** What an MDX page may use without importing it. */
export const MDX_COMPONENTS = { Caution, Fig, Method, Sign, WorksheetHere };
