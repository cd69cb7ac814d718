// What is said under a drawing of hinges; on paper once for all of a page.

/** Where a print is hinged to its mount, which is drawn from behind. */
export const hingedToMountNote =
	'No undermount is set, so this is the back of the mount. Measure from the edge marked left.';

/** The same of several drawings. */
export const hingedToMountsNote = 'Where a mount’s back is drawn, no undermount is set. Measure from “left”.';

/** What not to hinge by oneself. */
export const hingeCaution = 'Leave heavy or valuable work to a conservator.';
