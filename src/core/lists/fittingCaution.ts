import { knifeCautions } from '../bench/knifeCautions.ts';

/** What to mind while a print is fitted, on the screen and on its card. Common practice of framers. */
export const fittingCaution = `Gloves for glass. Eye protection for glass and points; drive points away from your hand. Two people lift a large frame. ${knifeCautions.rules}`;
