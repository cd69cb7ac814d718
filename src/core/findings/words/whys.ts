import type { Code } from '../figures.ts';

const ofRule = 'The rules of the show set it. Change the mount, or the rule in the settings if it is out of date.';

/** Why each finding matters and how it is judged: what waits behind its sentence until somebody asks. */
export const whys: { readonly [C in Code]: string } = {
	'not-read': 'What is typed is kept, and left out of bench and boards until it reads as a size, a name or a number.',
	'adds-up':
		'Across, border + window + border is the mount’s width; down, top + window + bottom is its height. The figures typed don’t agree. Clear the one you are least sure of.',
	'does-not-fit': 'Window and borders have to fit into the mount, and each needs some width.',
	'falls-through': 'A window larger than the paper has nothing behind its edge to hold the print.',
	'paper-short': 'Where the paper doesn’t reach behind the window’s edge nothing holds it, and its edge shows.',
	'over-limit': ofRule,
	'under-limit': ofRule,
	'too-thick': 'The rules of the show limit the thickness. Thinner board or one mount less would do.',
	'frame-clash': 'With no play in its rebate a mount buckles in damp air. With more than the lip covers a gap shows.',
	'too-deep': 'Glazing, mounts, print and backing have to lie within the rebate, with room for points behind them.',
	'no-board': 'No sheet or ready-cut blank in stock is large enough.',
	'touches-glass':
		'Damp gathers behind glazing, and a surface that lies on it can stick or rub off. A mount or a spacer keeps the print away.',
	'edition-clash': 'Each number of an edition belongs to one print, and none is higher than its size.',
	'needs-size': 'Too little is typed to work the sizes out.',
	'needs-paper': 'Where the window does not lie on the picture, the mount holds the paper, if that is large enough.',
	'own-size': 'A mount of another size needs a frame and a blank of its own. Leave it if that is meant.',
	'shape-clash': 'The shape is width to height of the whole picture. Another one crops or stretches it.',
	turned: 'A landscape picture in a portrait mount, or the other way round, is rare. Leave it if that is meant.',
	uneven:
		'Sides and top that differ a little look like a slip of the knife. Even ones, or a clear difference, look meant.',
	'thin-border': 'A thin border looks mean and is weak to cut. The limit is your own setting.',
	'lip-shrinks': 'The frame’s lip covers the edge of the mount, so less of each border shows than was cut.',
	'top-heavy': 'A picture that hangs below the middle seems to slip down. Usually the bottom is wider.',
	'bottom-heavy': 'A little more below keeps a picture from seeming to slip down. Much more looks like a mistake.',
	'weight-lost': 'The mount’s size is fixed, so the borders leave no room for a wider bottom.',
	'bare-paper': 'A window larger than the picture shows the paper round it. Set a reveal if that is meant.',
	'thin-overlap': 'No cut is more exact than your tolerance. With less overlap a strip of paper may show at the edge.',
	'paper-crowds': 'A print hangs from hinges at its top edge, which need room above it.',
	'paper-margin': 'Printers leave a margin blank, and a picture near the edge leaves nothing to hold the paper by.',
	'paper-bounds': 'The mount has room for a larger picture than the paper has.',
	'no-frame': 'More prints ask for this frame or its moulding than the settings say there are.',
	heavy:
		'A hook or cord that is only just strong enough gives way in time. What the wall is made of counts too. Ask someone who knows it.',
	'off-wall': 'By the sizes in the settings, the print needs more room than the wall has there.',
	'hangs-over': 'Two things would hang in one place. Leave it if one is above, below or behind the other.',
	'past-guide': 'The cutter’s guide cannot be set there. Such a cut is drawn and made along a straight edge.',
	'signature-covered': 'A signature below the picture is seen only where the window shows paper there.',
	'signed-on-mount': 'A mount is renewed when it yellows or is marked. A signature belongs on the print.',
	'low-resolution':
		'Fewer pixels an inch look soft or show steps up close. The limit is your own setting. Large prints are seen from further away.',
	crops: 'The file has another shape than the picture, so some of it is not printed.',
	'off-ruler': 'A figure that your ruler has no line for is set by eye.',
	'unit-slip': 'In another unit the figures would make sense. If they are right as they stand, leave it.',
};
